using Companion.Engine.Proofs;

namespace Companion.Session.Proving;

/// <summary>An entry and its easiest proof.</summary>
/// <param name="Entry">The entry's number.</param>
/// <param name="Attribution">The proof from the seen board before it, or that the ladder had none.</param>
public sealed record Attributed(int Entry, Attribution Attribution);
