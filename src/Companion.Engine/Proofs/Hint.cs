namespace Companion.Engine.Proofs;

/// <summary>
/// A hint of one grade. There is one derived type for each grade, and it has no member for what a higher grade gives, so that
/// nothing can slip out with it.
/// </summary>
public abstract class Hint
{
    private protected Hint(Saying words) => Words = words;

    /// <summary>How far it goes.</summary>
    public abstract Grade Grade { get; }

    /// <summary>The hint as words, which give no more than the grade allows.</summary>
    public Saying Words { get; }
}
