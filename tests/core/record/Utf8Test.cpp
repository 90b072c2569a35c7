// Which bytes are UTF-8, and how many characters they are.
#include "core/base/Utf8.h"

#include <gtest/gtest.h>

namespace raphe::test {

// Byte sequences that RFC 3629 (UTF-8; from memory) allows and forbids.
TEST(Utf8Test, KnowsUtf8)
{
    for (const char *good : {"", "a", "é", "\xEF\xBB\xBF", "李", "\xF0\x9F\x98\x80", "\xF4\x8F\xBF\xBF"})
        EXPECT_TRUE(isUtf8(good)) << good;
    for (const char *bad : {"\x80", "\xC3", "\xC0\x80", "\xE9t", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xFF", "ab\xE2\x82"})
        EXPECT_FALSE(isUtf8(bad)) << bad;
}

TEST(Utf8Test, CountsCharactersAndNotBytes)
{
    EXPECT_EQ(characterCount(""), 0U);
    EXPECT_EQ(characterCount("ab\n"), 3U);
    EXPECT_EQ(characterCount("ß李\xF0\x9F\x98\x80"), 3U) << "of two, three and four bytes";
}

} // namespace raphe::test
