// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/cautions.h"

namespace cutwater::sdk::tree {
namespace {

struct Caution {
    bool always; // also where nobody is sent to the machine
    const char* sentence;
};

constexpr Caution kStanding[] = {
    {true,
     "This sheet helps thinking. It replaces no maker's manual, class or flag rule, permit, or "
     "competent person."},
    {false,
     "Never start a burner by hand, or repeat starts, without a full purge. Unburnt oil in a hot "
     "furnace explodes; people have died of one more attempt. After a failed start look for oil, "
     "and "
     "purge."},
    {false, "Do not bridge flame detection or low-water protection to get steam. If a bridge is "
            "unavoidable "
            "under a permit: named person watching, limited time, alternative means, stop at hand, "
            "removed "
            "and function-tested, entered in the register."},
    {false,
     "Burner draw-out: fuel off and valves locked, fan purge, wait; hot soot can relight. Stand "
     "beside, not in front. Face shield, gloves, long sleeves."},
    {false,
     "Ignition voltage kills or causes a fall: isolate and earth before touching electrodes; "
     "open spark tests by a competent person only, away from oil vapour."},
    {false,
     "Low water: do not feed a boiler whose glass is empty and whose heat is on; shut the fuel, "
     "let it cool, have it inspected."},
    {false, "Control circuits at 24 V are joined to circuits at 230 V in the same box: prove dead, "
            "both sources. A live diode pair has two feeds to lock out."},
    {false, "Hot oil under pressure: 100 to 150 \xC2\xB0"
            "C, several bar; drain and vent before "
            "opening; screens against spray."},
    {false, "Safety valves and limiters are set and sealed by authorised persons."},
    {true,
     "Probabilities are estimates with wide limits; \"not in the list\" is not \"cannot happen\"."},
    {true, "Who signs decides. The tool never issues a permit and never states that a bypass is "
           "acceptable: it lists what is lost."},
};

} // namespace

void addCautions(std::vector<Note>& notes, CautionScope scope, const project::Project& project) {
    for (const Caution& caution : kStanding)
        if (caution.always || scope == CautionScope::machine)
            notes.push_back({NoteKind::caution, caution.sentence});
    for (const std::string& own : project.cautions)
        notes.push_back({NoteKind::caution, own});
}

} // namespace cutwater::sdk::tree
