// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater`: every analysis from a shell.
#include "app/cli/application.h"
#include "app/cli/interrupt.h"
#include "app/cli/program.h"
#include "models/logic/keep_memory.h"

#include <QCoreApplication>

#include <exception>
#include <iostream>
#include <new>

int main(int argc, char** argv) {
    cutwater::logic::keepMemory();
    const auto application = cutwater::cli::makeApplication(argc, argv);
    std::ios::sync_with_stdio(false);
    const cutwater::cli::Interrupt interrupt;
    try {
        return cutwater::cli::runProgram(
            std::vector<std::string>(argv + (argc > 0 ? 1 : 0), argv + argc),
            QCoreApplication::applicationDirPath().toStdString(), interrupt.token(), std::cout,
            std::cerr);
    } catch (const std::bad_alloc&) {
        std::cerr << "cutwater: there is no more memory; close other programs or ask for less.\n";
        return 3;
    } catch (const std::exception& error) {
        std::cerr << "cutwater: something went wrong that should not (" << error.what()
                  << "); please report it.\n";
        return 1;
    }
}
