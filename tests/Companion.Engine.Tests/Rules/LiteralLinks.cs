namespace Companion.Engine.Tests.Rules;

/// <summary>What may link two nodes strongly in a literal graph, and whether a cell links its candidates weakly.</summary>
[Flags]
internal enum LiteralLinks
{
    Cells = 1,
    Houses = 2,
    Groups = 4,
    Sets = 8,
    WithinCells = 16,
    Fish = 32,
}
