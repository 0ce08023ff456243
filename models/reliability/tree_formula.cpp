// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/tree_formula.h"
