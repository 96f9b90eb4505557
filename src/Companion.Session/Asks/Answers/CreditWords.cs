using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Asks.Answers;

/// <summary>Says which puzzle it is.</summary>
internal static class CreditWords
{
    public static string Of(Credit credit, Wording wording)
    {
        var (title, setter, link) = credit;
        var named = title.Length > 0 ? wording.Fill("asks.puzzle.title", ("title", title)) : wording.Fill("asks.puzzle.untitled");
        var owed = setter.Length > 0 ? wording.Fill("asks.puzzle.setter", ("puzzle", named), ("setter", setter)) : named;
        return link.Length > 0 ? wording.Fill("asks.puzzle.link", ("puzzle", owed), ("link", link)) : owed;
    }
}
