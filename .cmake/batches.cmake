# compile_in_batches(TARGET SIZE [BUT FOLDER...]): compiles the sources of each folder together, at
# most SIZE at a time, so that their headers are read once; those of some folders one by one. A batch
# never holds two folders: names in unnamed namespaces must differ within a folder only, and a source
# more moves none of another folder.
function(compile_in_batches target size)
  cmake_parse_arguments(PARSE_ARGV 2 one_by_one "" "" "BUT")
  get_target_property(sources ${target} SOURCES)
  foreach(source IN LISTS sources)
    # What is listed in the target's own folder comes without its path.
    file(REAL_PATH "${source}" source)
    get_filename_component(folder "${source}" DIRECTORY)
    file(RELATIVE_PATH folder ${CMAKE_SOURCE_DIR} "${folder}")
    if(folder IN_LIST one_by_one_BUT)
      set_source_files_properties("${source}" TARGET_DIRECTORY ${target}
        PROPERTIES SKIP_UNITY_BUILD_INCLUSION ON)
      continue()
    endif()
    string(MAKE_C_IDENTIFIER "${folder}" folder)
    list(APPEND folders ${folder})
    list(APPEND sources_of_${folder} "${source}")
  endforeach()
  list(REMOVE_DUPLICATES folders)
  foreach(folder IN LISTS folders)
    # Batches of one folder are of equal size.
    list(LENGTH sources_of_${folder} length)
    math(EXPR batches "(${length} + ${size} - 1) / ${size}")
    set(index 0)
    foreach(source IN LISTS sources_of_${folder})
      math(EXPR batch "${index} * ${batches} / ${length}")
      set_source_files_properties("${source}" TARGET_DIRECTORY ${target}
        PROPERTIES UNITY_GROUP ${folder}_${batch})
      math(EXPR index "${index} + 1")
    endforeach()
  endforeach()
  set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_MODE GROUP)
endfunction()
