using Companion.Engine.Proofs;

namespace Companion.Engine.Planning;

/// <summary>What the steps of a passage have in common.</summary>
public abstract record Theme
{
    private Theme()
    {
    }

    /// <summary>The turn of a featured rule.</summary>
    /// <param name="Rule">The rule.</param>
    public sealed record Turn(RuleId Rule) : Theme;

    /// <summary>Steps of one rule that is no single.</summary>
    /// <param name="Rule">The rule.</param>
    public sealed record OfRule(RuleId Rule) : Theme;

    /// <summary>Singles in one house.</summary>
    /// <param name="House">The house.</param>
    public sealed record InHouse(House House) : Theme;

    /// <summary>Singles of one digit.</summary>
    /// <param name="Digit">The digit.</param>
    public sealed record OfDigit(Digit Digit) : Theme;

    /// <summary>Singles in one band or stack.</summary>
    /// <param name="Chute">The band or stack.</param>
    public sealed record InChute(Chute Chute) : Theme;

    /// <summary>Singles all over the grid.</summary>
    public sealed record Everywhere : Theme;
}
