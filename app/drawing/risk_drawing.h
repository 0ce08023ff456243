// SPDX-License-Identifier: GPL-3.0-or-later
// The risk matrix as a picture on a landscape A4 sheet: indices, words, what stands in each cell,
// and the standing caution. The index carries the meaning; the shade only helps.
#pragma once

#include "app/drawing/lettering.h"
#include "app/drawing/picture.h"
#include "models/project/project.h"
#include "models/worksheet/risk_placement.h"

namespace cutwater::drawing {

Picture drawRisks(const project::Project& project, const worksheet::RiskPicture& risks,
                  const Lettering& lettering);

} // namespace cutwater::drawing
