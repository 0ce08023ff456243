// SPDX-License-Identifier: GPL-3.0-or-later
// Words of the models that a person sees, marked for the translators: the models know no language.
// A test holds the names of the edits to models/project/edits.
#include <QtGlobal>

namespace cutwater::editor {

[[maybe_unused]] static const char* const kEdits[] = {
    QT_TRANSLATE_NOOP("Edits", "Add %1"),
    QT_TRANSLATE_NOOP("Edits", "Change the facts of the project"),
    QT_TRANSLATE_NOOP("Edits", "Change the failure model of %1"),
    QT_TRANSLATE_NOOP("Edits", "Change the remark of %1"),
    QT_TRANSLATE_NOOP("Edits", "Change top event %1"),
    QT_TRANSLATE_NOOP("Edits", "Delete %1"),
    QT_TRANSLATE_NOOP("Edits", "Dissolve %1"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 a top event"),
    QT_TRANSLATE_NOOP("Edits", "Move %1"),
    QT_TRANSLATE_NOOP("Edits", "Paste %1"),
    QT_TRANSLATE_NOOP("Edits", "Put a gate above %1"),
    QT_TRANSLATE_NOOP("Edits", "Rename to %1"),
    QT_TRANSLATE_NOOP("Edits", "Separate %1"),
    QT_TRANSLATE_NOOP("Edits", "Use %1 once more"),
    QT_TRANSLATE_NOOP("Edits", "Use failure mode %1"),
    QT_TRANSLATE_NOOP("Edits", "Move %1 down"),
    QT_TRANSLATE_NOOP("Edits", "Move %1 up"),
    QT_TRANSLATE_NOOP("Edits", "Give %1 a failure mode"),
    QT_TRANSLATE_NOOP("Edits", "Take the failure mode from %1"),
    QT_TRANSLATE_NOOP("Edits", "Set %1 to false"),
    QT_TRANSLATE_NOOP("Edits", "Set %1 to true"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 a gate of the kind and"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 a gate of the kind or"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 a gate of the kind vote"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 a gate of the kind inhibit"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 a gate of the kind xor"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 a gate of the kind not"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 a gate of the kind priority-and"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 an event of the kind basic"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 an event of the kind undeveloped"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 an event of the kind house"),
    QT_TRANSLATE_NOOP("Edits", "Make %1 an event of the kind conditioning"),
    QT_TRANSLATE_NOOP("Edits", "Let %1 need 1 of its inputs"),
    QT_TRANSLATE_NOOP("Edits", "Let %1 need 2 of its inputs"),
    QT_TRANSLATE_NOOP("Edits", "Let %1 need 3 of its inputs"),
    QT_TRANSLATE_NOOP("Edits", "Let %1 need 4 of its inputs"),
    QT_TRANSLATE_NOOP("Edits", "Let %1 need 5 of its inputs"),
    QT_TRANSLATE_NOOP("Edits", "Let %1 need 6 of its inputs"),
    QT_TRANSLATE_NOOP("Edits", "Let %1 need 7 of its inputs"),
    QT_TRANSLATE_NOOP("Edits", "Let %1 need 8 of its inputs"),
    QT_TRANSLATE_NOOP("Edits", "Let %1 need 9 of its inputs"),
};

// The sentences of the failure models.
[[maybe_unused]] static const char* const kModels[] = {
    QT_TRANSLATE_NOOP("Models", "not quantified"),
    QT_TRANSLATE_NOOP("Models", "a constant probability"),
    QT_TRANSLATE_NOOP("Models", "fails at a constant rate during the mission and is not repaired"),
    QT_TRANSLATE_NOOP("Models", "fails at a constant rate, is seen at once and repaired"),
    QT_TRANSLATE_NOOP("Models",
                      "fails unseen at a constant rate and is found only by a periodic test"),
    QT_TRANSLATE_NOOP("Models", "fails with a fixed probability when asked"),
    QT_TRANSLATE_NOOP("Models", "ages during the mission after Weibull and is not repaired"),
    QT_TRANSLATE_NOOP("Models", "an initiating event: how often it happens"),
};

} // namespace cutwater::editor
