namespace Companion.Engine.Proofs;

/// <summary>Grade 2: the rule to look for. No digit, no cell.</summary>
public sealed class WhatHint : Hint
{
    internal WhatHint(RuleId rule, string name, Saying words)
        : base(words) => (Rule, Name) = (rule, name);

    /// <inheritdoc/>
    public override Grade Grade => Grade.What;

    /// <summary>The rule.</summary>
    public RuleId Rule { get; }

    /// <summary>Its spoken name, such as <c>naked pair</c>.</summary>
    public string Name { get; }
}
