namespace Companion.Engine.Proofs;

/// <summary>The name of a rule as files and interfaces write it: the trade's in kebab case, such as <c>xy-wing</c>.</summary>
/// <param name="Value">The name; the default value is the empty name, which no rule has.</param>
public readonly record struct RuleId(string Value)
{
    private readonly string? _value = Value;

    /// <summary>The name; the default value is the empty name, which no rule has.</summary>
    public string Value => _value ?? "";

    /// <summary>The name.</summary>
    public override string ToString() => Value;
}
