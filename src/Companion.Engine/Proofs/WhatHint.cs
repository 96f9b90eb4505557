namespace Companion.Engine.Proofs;

/// <summary>Grade 2: the rule to look for, where grade 1 sent the eye. No digit, no cell.</summary>
public sealed class WhatHint : Hint
{
    internal WhatHint(Region region, RuleId rule, string name, Saying words)
        : base(words) => (Region, Rule, Name) = (region, rule, name);

    /// <inheritdoc/>
    public override Grade Grade => Grade.What;

    /// <summary>The house or chute to look at, the same as grade 1 gave.</summary>
    public Region Region { get; }

    /// <summary>The rule.</summary>
    public RuleId Rule { get; }

    /// <summary>Its spoken name, such as <c>naked pair</c>.</summary>
    public string Name { get; }
}
