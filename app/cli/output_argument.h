#pragma once

#include <string>
#include <vector>

namespace creasewright {

/// Whether `output` can be written to: its name is UTF-8, and it is none of the `inputs` that the
/// command reads, under whatever name; a folder may hold them, but not where files of ours come to
/// lie. Else the problem is told. An empty name is for the commands to judge.
bool outputServes(const std::string& output, const std::vector<std::string>& inputs);

}  // namespace creasewright
