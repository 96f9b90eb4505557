using System.Text;
using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Asks.Answers;

/// <summary>Says which puzzle it is.</summary>
internal static class CreditWords
{
    public static string Of(Credit credit, Wording wording)
    {
        var (title, setter, link) = (OneLine(credit.Title), OneLine(credit.Setter), OneLine(credit.Link));
        var named = title.Length > 0 ? wording.Fill("asks.puzzle.title", ("title", title)) : wording.Fill("asks.puzzle.untitled");
        var owed = setter.Length > 0 ? wording.Fill("asks.puzzle.setter", ("puzzle", named), ("setter", setter)) : named;
        return link.Length > 0 ? wording.Fill("asks.puzzle.link", ("puzzle", owed), ("link", link)) : owed;
    }

    // The presenter pasted them from somewhere.
    private static string OneLine(string text)
    {
        var line = new StringBuilder(text.Length);
        foreach (var letter in text)
            line.Append(char.IsControl(letter) ? ' ' : letter);
        return line.ToString().Trim();
    }
}
