using Companion.Engine;
using Companion.Sight.Finding;
using Companion.Sight.Reading;

namespace Companion.Sight;

/// <summary>
/// Keeps an eye on a screen, frame by frame: finds the grid once, and reads again only the cells whose pixels changed. Not for several
/// threads at once.
/// </summary>
public sealed class BoardSight
{
    // When so many cells change at once the grid may have moved.
    private const int Many = 27;

    private readonly GlyphReader _reader;
    private readonly Comparisons _known = new();
    private readonly CellSketch[] _sketches = new CellSketch[Cell.Count];
    private StraightBoard? _board;
    private GridPrint? _print;
    private Lessons _lessons = Lessons.None;
    private BoardReading? _last;

    /// <summary>Begins without a grid.</summary>
    /// <param name="reader">Reads the digits.</param>
    public BoardSight(GlyphReader reader) => _reader = reader;

    /// <summary>Where the grid was found; null where there is none.</summary>
    public GridPlace? Place { get; private set; }

    /// <summary>How many cells the last look read anew, 0 to 81.</summary>
    public int ReadAnew { get; private set; }

    /// <summary>Looks at the next frame, and finds the grid in it.</summary>
    /// <param name="frame">The screen.</param>
    /// <param name="lessons">What the presenter taught.</param>
    /// <returns>What stands there, the same object as before where nothing changed; null where no grid is seen.</returns>
    public BoardReading? See(Frame frame, Lessons lessons)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(lessons);
        var changed = _print?.Changed(frame);
        ReadAnew = 0;
        if (changed is { Count: 0 } && lessons == _lessons)
            return _last;
        if (changed is null || changed.Count >= Many)
            changed = FindAgain(frame) ? changed ?? AllCells() : AllCells();
        return _board is null ? _last = null : Read(frame, _board, changed, lessons);
    }

    /// <summary>Looks at the next frame, in which the grid is where somebody says.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="place">Where the grid is; its lines are looked for nearby.</param>
    /// <param name="lessons">What the presenter taught.</param>
    /// <returns>What stands there, the same object as before where nothing changed.</returns>
    /// <exception cref="ArgumentException">The corners of the place make no grid.</exception>
    public BoardReading See(Frame frame, GridPlace place, Lessons lessons)
    {
        ArgumentNullException.ThrowIfNull(frame);
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(lessons);
        var (straight, columns, rows) = StraightBoard.Straight(frame, place);
        var changed = place == Place ? _print?.Changed(straight) : null;
        ReadAnew = 0;
        if (changed is { Count: 0 } && lessons == _lessons && _last is not null)
            return _last;
        if (_board is null || changed is null || changed.Count >= Many)
        {
            (_board, Place, _print) = (StraightBoard.Of(straight, LineFit.Of(straight, columns, rows)), place, null);
            changed = AllCells();
        }

        return Read(straight, _board, changed, lessons);
    }

    private BoardReading Read(Frame frame, StraightBoard board, List<int> changed, Lessons lessons)
    {
        if (lessons != _lessons)
            changed = AllCells();
        _lessons = lessons;
        foreach (var index in changed)
            _sketches[index] = CellSketch.Of(frame, board.Boxes[index], _sketches[index]);
        new GlyphRounds(glyphs => _reader.Read(glyphs, lessons), SignReader.Standard).Read([.. changed.Select(index => _sketches[index])], _sketches);
        ReadAnew = changed.Count;
        _print ??= new(_sketches, (frame.Width, frame.Height));
        return _last = BoardReader.Reading(_sketches, _known, CellReader.Standard);
    }

    private static List<int> AllCells() => [.. Enumerable.Range(0, Cell.Count)];

    // Whether it is still where it was.
    private bool FindAgain(Frame frame)
    {
        var fit = StraightFinder.Find(frame);
        var place = fit?.Place();
        var isSame = place is not null && place == Place && _print?.Fits(frame) == true;
        if (!isSame)
        {
            _board = fit is null ? null : StraightBoard.Of(frame, fit);
            (Place, _print) = (place, null);
        }

        return isSame;
    }
}
