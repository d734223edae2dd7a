#pragma once

#include <optional>
#include <string>

#include "cli/grammar.h"
#include "document/design.h"

namespace creasewright {

/// Product, card, ease and grid as written on the command line; empty where not given.
struct ChoiceOptions {
  std::string product;
  std::string card;
  std::string colour;
  std::string pattern;
  std::string ease;
  std::string grid;
  std::string board;
};

/// What they name, before any style is asked.
struct Choices {
  std::optional<Product> product;
  Card card = Design().card;
  Ease ease = Design().ease;
  ToolGrid grid = Design().grid;
  Length board;
};

/// Nothing when one cannot be read (the problem is told); `productArgument` is the name under which
/// the product was given.
std::optional<Choices> readChoices(const ChoiceOptions& options, const char* productArgument);

/// The arguments that `choices` is filled by: the product's under its `name`, and card, ease, grid.
void addProduct(Grammar& grammar, const char* name, ChoiceOptions& choices);
void addMaterial(Grammar& grammar, ChoiceOptions& choices);

}  // namespace creasewright
