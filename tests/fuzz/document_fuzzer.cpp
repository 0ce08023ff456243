// SPDX-License-Identifier: GPL-3.0-or-later
// libFuzzer's entry; built by clang with -DCUTWATER_FUZZ=ON:
//   bin/document_fuzzer -dict=../../tests/fuzz/document.dict ../../tests/fuzz/corpus/document
#include "tests/fuzz/check_document.h"

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string complaint =
        cutwater::fuzz::complaintAbout(std::string(reinterpret_cast<const char*>(data), size));
    if (!complaint.empty()) {
        std::fprintf(stderr, "%s\n", complaint.c_str());
        std::abort();
    }
    return 0;
}
