namespace Companion.Engine.Proofs;

/// <summary>How the last two members of a list are joined.</summary>
internal enum Joint
{
    /// <summary>All of them: a, b and c.</summary>
    And,

    /// <summary>Some of them: a, b or c.</summary>
    Or,
}

/// <summary>What goes into a slot of a template.</summary>
/// <param name="Count">How many things it lists; decides between singular and plural.</param>
/// <param name="Text">The list as text.</param>
internal readonly record struct Filling(int Count, Func<Joint, string> Text)
{
    internal static Filling One(string text) => new(1, _ => text);
}
