using System.Collections.Immutable;
using Companion.Drawing.Pictures;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Views;

namespace Companion.Drawing.Paper;

/// <summary>A board to be printed.</summary>
/// <param name="Cells">What is written in each cell, row by row.</param>
/// <param name="Picture">What is drawn over it; null for nothing.</param>
/// <param name="Alternative">The same in words, for those who cannot see it.</param>
public sealed record Figure(ImmutableArray<StageCell> Cells, Picture? Picture, string Alternative)
{
    /// <summary>The figure of a deduction on its board.</summary>
    /// <param name="board">The board.</param>
    /// <param name="hint">The deduction.</param>
    /// <param name="withMarks">Whether all candidates that stand are written in the open cells, or those of the pattern alone.</param>
    public static Figure Of(Board board, WhyHint hint, bool withMarks)
    {
        ArgumentNullException.ThrowIfNull(hint);
        return new(withMarks ? StageCells.WithCandidates(board) : StageCells.Of(board), PictureOf.Hint(hint), hint.Words.Written);
    }

    /// <summary>The figure of a bare board.</summary>
    /// <param name="board">The board.</param>
    /// <param name="withMarks">Whether all candidates that stand are written in the open cells.</param>
    public static Figure Of(Board board, bool withMarks)
    {
        ArgumentNullException.ThrowIfNull(board);
        return new(withMarks ? StageCells.WithCandidates(board) : StageCells.Of(board), null, BoardText.Write(board));
    }
}
