// SPDX-License-Identifier: GPL-3.0-or-later
// `gather_plugin_words PLUGINS DEMO`: prints share/translations/plugin_words.cxx.
#include "models/document/document.h"
#include "tests/app/editor/translation/plugin_words.h"

#include <QCoreApplication>

#include <cstdio>

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    if (argc != 3) {
        std::fputs("gather_plugin_words PLUGINS DEMO\n", stderr);
        return 2;
    }
    const auto demo = cutwater::document::load(argv[2]);
    if (!demo) {
        std::fputs("the demo cannot be read\n", stderr);
        return 1;
    }
    cutwater::sdk::Host host({argv[1]});
    std::fputs(cutwater::test::asSource(cutwater::test::pluginWords(host, demo->project)).c_str(),
               stdout);
    return 0;
}
