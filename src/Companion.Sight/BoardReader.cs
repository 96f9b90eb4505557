using System.Collections.Immutable;
using Companion.Engine;
using Companion.Sight.Reading;

namespace Companion.Sight;

/// <summary>
/// Reads what stands in the cells of a grid. It goes by shapes and by colours against each other alone: what is ink shows against the
/// ground of its own cell. What is neither a digit nor plainly a part of the page makes a cell unsure, so that nothing wrong is
/// entered silently.
/// </summary>
public static class BoardReader
{
    /// <summary>Reads a whole grid.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="place">Where the grid is in it, as <see cref="GridFinder"/> found it.</param>
    /// <param name="reader">Reads the digits.</param>
    /// <param name="lessons">What the presenter taught.</param>
    public static BoardReading Read(Frame frame, GridPlace place, GlyphReader reader, Lessons lessons)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentNullException.ThrowIfNull(lessons);
        return Read(frame, place, glyphs => reader.Read(glyphs, lessons), SignReader.Standard, CellReader.Standard);
    }

    internal static BoardReading Read(Frame frame, GridPlace place, Func<IReadOnlyList<GlyphImage>, IReadOnlyList<GlyphReading>> read, SignReader? around, CellReader? whole = null)
    {
        var board = StraightBoard.Of(frame, place);
        CellSketch[] sketches = [.. board.Boxes.Select(box => CellSketch.Of(board.Frame, box))];
        new GlyphRounds(read, around).Read(sketches, sketches);
        return Reading(sketches, new(), whole);
    }

    internal static BoardReading Reading(CellSketch[] sketches, Comparisons known, CellReader? whole)
    {
        var verdict = new CellVerdict(sketches, Siblings.Compare(sketches, known));
        BoardContext.Apply([.. sketches.Select((sketch, index) => verdict.Digits(Cell.At(index), sketch))]);
        var bigs = sketches.Select(verdict.Big).ToArray();
        var givens = GivenSplit.Of(bigs);
        ImmutableArray<CellReading> readings = [.. sketches.Select((sketch, index) => verdict.Of(Cell.At(index), sketch, bigs[index] is { } big ? givens[big] : null))];
        return new(whole is null ? readings : new WholeCells(sketches, verdict).Propose(readings, whole));
    }
}
