namespace Companion.Sight.Reading;

/// <summary>
/// How strongly the digits of one kind, big ones or marks, show on a board: on the ground that most cells have as they do in the middle, on
/// that of a highlighted cell as the faintest of their colours would.
/// </summary>
internal sealed class InkStrength
{
    // Grounds that differ by less are one; a part of the cells makes it usual.
    private const float SameGround = 24, UsualFrom = 0.25f;

    // Of the colours of digits that were read surely some may be of something else.
    private const float Astray = 0.05f;

    private readonly IReadOnlyList<CellSketch> _board;
    private readonly Rgb[] _colours;
    private readonly Dictionary<CellInk, float> _known = [];

    /// <summary>Measures it.</summary>
    /// <param name="board">All cells.</param>
    /// <param name="sure">The digits of that kind that were read surely.</param>
    public InkStrength(IReadOnlyList<CellSketch> board, IReadOnlyList<Sign> sure)
    {
        _board = board;
        float[] peaks = [.. sure.Select(sign => sign.Blob.Peak).Order()];
        Count = peaks.Length;
        Usual = peaks.Length > 0 ? peaks[peaks.Length / 2] : 0;
        _colours = [.. sure.Where(sign => IsUsual(sign.Ink)).Select(sign => sign.Colour)];
    }

    /// <summary>How many were measured.</summary>
    public int Count { get; }

    /// <summary>How far most are from their ground; 0 where there are none.</summary>
    public float Usual { get; }

    /// <summary>How far one in this cell must be expected to be from its ground; 0 where nothing tells.</summary>
    /// <param name="cell">The cell.</param>
    public float In(CellInk cell)
    {
        if (!_known.TryGetValue(cell, out var strength))
            _known[cell] = strength = Measure(cell);
        return strength;
    }

    private float Measure(CellInk cell)
    {
        if (_colours.Length == 0 || IsUsual(cell))
            return Usual;
        float[] distances = [.. _colours.Select(colour => cell.Grounds.Min(ground => ground.Distance(colour))).Order()];
        return Math.Min(Usual, distances[(int)(Astray * distances.Length)]);
    }

    /// <summary>Whether something has the colour of these digits, or a mixture of it and its ground; where nothing tells, it has.</summary>
    /// <param name="sign">The thing.</param>
    public bool IsLike(Sign sign)
    {
        const float Like = 40;
        var (colour, ground) = (sign.Colour, sign.Ink.Ground.Middle);
        return _colours.Length == 0 || Array.Exists(_colours, other => colour.DistanceToMix(ground, other) <= Like);
    }

    private bool IsUsual(CellInk cell) =>
        cell.Grounds.Count == 1 && _board.Count(other => other.Ink.Ground.Middle.Distance(cell.Ground.Middle) <= SameGround) >= UsualFrom * _board.Count;
}
