using Companion.Server.Chat;

namespace Companion.Server.Tests.Chat;

public sealed class ChatTextTests
{
    [Theory]
    // After byte 03 up to two digits are eaten, and up to two more after a comma; the third digit is text.
    [InlineData("\x03" + "4red\x03 plain", "red plain")]
    [InlineData("\x03" + "04,12red", "red")]
    [InlineData("\x03" + "123", "3")]
    [InlineData("\x03" + "4,x", ",x")]
    [InlineData("\x03,4", ",4")]
    [InlineData("\x04" + "FF00aared", "red")]
    [InlineData("\x02" + "bold\x02 \x1D" + "italic\x1D \x1Funder\x1F \x1Estruck\x1E \x11mono\x11 \x16turned\x16\x0F", "bold italic under struck mono turned")]
    public void Formatting_is_taken_out(string text, string plain) => Assert.Equal(plain, ChatText.Plain(text));

    [Theory]
    [InlineData("a\0b\x01" + "c\x7F" + "d\u0085e", "abcde")]
    [InlineData("a\r\nQUIT", "a QUIT")]
    [InlineData("a\tb\u00A0c\u2028d", "a b c d")]
    [InlineData("  a    b  ", "a b")]
    [InlineData("\u202Eabc\u202C \u2066x\u2069\u200F\u061C", "abc x")]
    [InlineData("\uFEFFa\uD800b", "ab")]
    [InlineData("häschen 中文 👩‍🚀", "häschen 中文 👩‍🚀")]
    public void What_changes_how_a_line_is_read_is_taken_out_and_letters_stay(string text, string plain) =>
        Assert.Equal(plain, ChatText.Plain(text));

    [Theory]
    [InlineData("/quit", "quit")]
    [InlineData("!hint", "hint")]
    [InlineData(". /.!x", "x")]
    [InlineData("\x02/me", "me")]
    [InlineData("row five", "row five")]
    [InlineData("...", "")]
    public void What_is_said_begins_with_no_command(string text, string said) => Assert.Equal(said, ChatText.Sayable(text));
}
