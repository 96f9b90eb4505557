namespace Companion.Engine.Proofs;

/// <summary>What a rule is called in speech.</summary>
/// <param name="Bare">The name alone: <c>naked pair</c>.</param>
/// <param name="WithArticle">The name as one is looked for: <c>a naked pair</c>.</param>
public sealed record RuleName(string Bare, string WithArticle);
