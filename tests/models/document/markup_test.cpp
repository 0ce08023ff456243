// SPDX-License-Identifier: GPL-3.0-or-later
// Our way from a text to elements, attributes and texts beside pugixml's, which shares no code with
// it, on documents of every shape that the reader lets pass.
#include "models/document/lines.h"
#include "models/document/scan.h"

#include <algorithm>
#include <cstring>
#include <gtest/gtest.h>
#include <pugixml.hpp>
#include <random>

namespace cutwater::document {

namespace {

// Well-formed documents, the odd ones above all.
class Maker {
public:
    explicit Maker(unsigned seed) : m_random(seed) {}

    std::string document() {
        m_text = below(2) ? "<?xml version=\"1.0\"?>\r\n<!-- before -->" : "";
        element(0);
        m_text += below(2) ? "\n<?after all?><!---->\n" : "";
        return m_text;
    }

private:
    std::size_t below(std::size_t end) { return m_random() % end; }
    void oneOf(std::initializer_list<const char*> words) {
        m_text += words.begin()[below(words.size())];
    }
    void blanks() { oneOf({"", "", " ", "\n", "\r\n  ", "\t", "\r"}); }
    void words() {
        for (std::size_t count = below(4); count > 0; --count)
            oneOf({"a",          "pump 1",   " ",      "\r\n",   "\r",       "\n",
                   "\t",         "&amp;",    "&lt;",   "&gt;",   "&quot;",   "&apos;",
                   "&#13;",      "&#10;",    "&#x20;", "&#xe9;", "&#x20AC;", "&#x1F525;",
                   "&#1114111;", "\xC3\xA9", ">",      "]]"});
    }
    void attribute(int number) {
        m_text += ' ';
        blanks();
        oneOf({"id", "x-", "\xC3\xA4.b:"});
        m_text += std::to_string(number);
        blanks();
        m_text += '=';
        blanks();
        const char* quote = below(2) ? "\"" : "'";
        m_text += quote;
        words();
        m_text += below(3) ? "" : *quote == '"' ? "'" : "\"";
        m_text += quote;
    }
    void element(int depth) {
        const char* const name = below(2) ? "name" : "n:\xC3\xA9-1";
        m_text += '<';
        m_text += name;
        for (std::size_t count = below(4), i = 0; i < count; ++i)
            attribute(static_cast<int>(i));
        blanks();
        if (below(4) == 0) {
            m_text += "/>";
            return;
        }
        m_text += '>';
        for (std::size_t count = below(6); count > 0; --count)
            switch (below(6)) {
            case 0: words(); break;
            case 1: blanks(); break;
            case 2: oneOf({"<!-- c -->", "<!---->", "<!-- <a>&b;\r\n -->"}); break;
            case 3: oneOf({"<?do it?>", "<?x ? ?>"}); break;
            case 4: oneOf({"<![CDATA[]]>", "<![CDATA[ ]]>", "<![CDATA[<a>&amp;\r\n]]]>"}); break;
            default:
                if (depth < 5) element(depth + 1);
            }
        m_text += "</";
        m_text += name;
        blanks();
        m_text += '>';
    }

    std::mt19937 m_random;
    std::string m_text;
};

// Each element with what belongs to it, in the order of the file.
std::string described(std::string_view name, std::size_t offset, const std::string& attributes,
                      const std::vector<std::string>& texts) {
    std::string all(name);
    all += '@' + std::to_string(offset) + attributes;
    for (const std::string& text : texts)
        all += '{' + text + '}';
    return all + '\n';
}

std::string asWeReadIt(const std::string& text) {
    Markup markup(text);
    if (const auto fault = scanDocument(markup)) return toSentence(*fault);
    std::string all, room;
    for (Markup::Position i = 0; i < markup.elements.size(); ++i) {
        std::string attributes;
        for (const auto* it = markup.attributesOf(i); it < markup.attributesEnd(i); ++it)
            (attributes += '[')
                .append(markup.nameOf(*it))
                .append("|")
                .append(markup.valueOf(*it, room)) += ']';
        const std::vector<std::string> texts = markup.textsOf(i);
        all += described(markup.nameOf(i), markup.elements[i].name, attributes, texts);
        // The short ways say the same.
        const bool isPlain = !markup.elements[i].hasPieces && !markup.holdsElements(i);
        if (isPlain) {
            EXPECT_EQ(markup.plainTextOf(i, room), texts.empty() ? "" : texts[0]);
        }
        const bool saysAnything =
            std::any_of(texts.begin(), texts.end(), [](const std::string& its) {
                return its.find_first_not_of(" \t\r\n") != std::string::npos;
            });
        if (saysAnything) {
            EXPECT_TRUE(markup.elements[i].hasText);
        }
        EXPECT_EQ(text[markup.endOf(i) - 1], '>');
        EXPECT_EQ(elementEnd(text, markup.elements[i].name - 1), markup.endOf(i));
    }
    return all;
}

void describeInto(std::string& all, pugi::xml_node node) {
    std::string attributes;
    for (const pugi::xml_attribute attribute : node.attributes())
        (attributes += '[').append(attribute.name()).append("|").append(attribute.value()) += ']';
    std::vector<std::string> texts;
    for (const pugi::xml_node child : node.children())
        if (child.type() != pugi::node_element) texts.emplace_back(child.value());
    all += described(node.name(), static_cast<std::size_t>(node.offset_debug()), attributes, texts);
    for (const pugi::xml_node child : node.children())
        if (child.type() == pugi::node_element) describeInto(all, child);
}

std::string asPugixmlReadsIt(std::string text) {
    pugi::xml_document document;
    if (!document.load_buffer_inplace(text.data(), text.size(),
                                      pugi::parse_default | pugi::parse_ws_pcdata_single,
                                      pugi::encoding_utf8))
        return "not understood";
    std::string all;
    describeInto(all, document.document_element());
    return all;
}

} // namespace

TEST(Markup, IsWhatPugixmlReads) {
    for (unsigned seed = 0; seed < 3000; ++seed) {
        const std::string text = Maker(seed).document();
        ASSERT_EQ(asWeReadIt(text), asPugixmlReadsIt(text)) << "seed " << seed << ":\n" << text;
    }
}

TEST(Markup, BlanksAloneCountWhereNothingElseStands) {
    const std::string text = "<r><a> </a><b> <!-- c --> </b><c>x<!-- c --> </c><d> <e/> </d></r>";
    Markup markup(text);
    ASSERT_FALSE(scanDocument(markup));
    using Texts = std::vector<std::string>;
    EXPECT_EQ(markup.textsOf(1), Texts{" "});
    EXPECT_EQ(markup.textsOf(2), Texts{" "}); // the second one
    EXPECT_EQ(markup.textsOf(3), Texts{"x"});
    EXPECT_EQ(markup.textsOf(4), Texts{});
}

TEST(Markup, HoldsElementsInTheOrderOfTheFile) {
    const std::string text = "<r><a x='1' y='2'><b/></a><c/></r>";
    Markup markup(text);
    ASSERT_FALSE(scanDocument(markup));
    ASSERT_EQ(markup.elements.size(), 4u);
    EXPECT_EQ(markup.elements[0].parent, Markup::kNone);
    EXPECT_EQ(markup.elements[1].parent, 0u);
    EXPECT_EQ(markup.elements[2].parent, 1u);
    EXPECT_EQ(markup.elements[1].next, 3u);
    EXPECT_EQ(markup.elements[0].next, 4u);
    EXPECT_EQ(markup.attributesEnd(1) - markup.attributesOf(1), 2);
    EXPECT_EQ(markup.attributesEnd(2) - markup.attributesOf(2), 0);
    EXPECT_EQ(markup.attributesEnd(3) - markup.attributesOf(3), 0);
}

} // namespace cutwater::document
