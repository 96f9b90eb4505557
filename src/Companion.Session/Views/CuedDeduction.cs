using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.Views;

/// <summary>The deduction of a call-out.</summary>
/// <param name="Id">Its one-line text, by which commands name it.</param>
/// <param name="Name">The rule's spoken name.</param>
/// <param name="Short">The deduction in short written form.</param>
/// <param name="Grade">How much of it is said, and shown when it is taken on air.</param>
/// <param name="Cells">The cells of its pattern.</param>
/// <param name="Passed">Why it is not open any more, as in "has been passed"; null while it is open.</param>
public sealed record CuedDeduction(string Id, string Name, string Short, Grade Grade, ImmutableArray<Cell> Cells, string? Passed);
