#include "shell/make_menu.h"

namespace creasewright {

MakeMenu::MakeMenu(DesignSession& session, QWidget* window)
    : QMenu(window), session_(session), window_(window) {}

}  // namespace creasewright
