using System.Numerics.Tensors;

namespace Companion.Sight.Reading;

/// <summary>
/// A look of a digit, and the lines of its board that may go through it, made once for all marks that are compared with it.
/// </summary>
internal sealed class StruckLook
{
    // In pixels: where the digit may lie beside its best place, how far aside a line may lie, and half of how thick it may be. The line
    // that any place is tried with comes first.
    private static readonly (int Right, int Down)[] _near = [(0, 0), (-1, 0), (1, 0), (0, -1), (0, 1)];
    private static readonly float[] _asides = [0, -1, -0.5f, 0.5f, 1];
    private static readonly float[] _halves = [0.5f, 0.9f];

    // A better place makes less of a difference than this.
    private const float MuchMore = 1.8f;

    private readonly InkPlane _look;
    private readonly float _ink, _squares;
    private readonly (int X, int Y, float Part)[][] _lines;
    private readonly int _longest;
    private readonly Lazy<StruckLook[]> _between;

    /// <summary>Prepares a look.</summary>
    /// <param name="look">The look, cut out with <see cref="InkPatch.Room"/>.</param>
    /// <param name="shape">How the lines of the board are drawn.</param>
    public StruckLook(InkPlane look, StruckShape shape)
        : this(look, [.. from half in _halves from aside in _asides select shape.Line(look, aside, half)])
    {
    }

    private StruckLook(InkPlane look, (int X, int Y, float Part)[][] lines)
    {
        (_look, _lines, _longest) = (look, lines, lines.Max(line => line.Length));
        (_ink, _squares) = (TensorPrimitives.Sum(look.Ink), TensorPrimitives.SumOfSquares(look.Ink));
        var height = look.Height - 2 * InkPatch.Room;
        // It stays as large as it is, and so do the lines.
        _between = new(() => Array.ConvertAll(Looks.Between, at => new StruckLook(InkPatch.Reset(look, height, at.Item1, at.Item2), lines)));
    }

    /// <summary>The look as it would be if it stood otherwise between the pixels.</summary>
    public IReadOnlyList<StruckLook> Between => _between.Value;

    /// <summary>Compares a mark with the look as it is, and with a line through it, each at its best place.</summary>
    /// <param name="patch">The mark, cut out with <see cref="InkPatch.Room"/>.</param>
    /// <param name="reach">What differs by much more than this is not looked at closely.</param>
    public LineFinding Compare(InkPlane patch, float reach = float.MaxValue)
    {
        var (x, y) = Overlay.Shift(patch, _look);
        const int Free = 2;
        var (left, top) = (Math.Min(0, x) - Free, Math.Min(0, y) - Free);
        var (width, height) = (Math.Max(patch.Width, x + _look.Width) + Free - left, Math.Max(patch.Height, y + _look.Height) + Free - top);
        using var own = Overlay.Placed(patch, -left, -top, width, height);
        using var spare = new Scratch(3 * width * height);
        var pair = new Pair(this, own.Values, spare.Values, width);
        var (plain, struck, best) = (float.MaxValue, float.MaxValue, (X: 0, Y: 0));
        // The place first, then the line's.
        foreach (var (right, down) in _near)
        {
            var at = (X: x - left + right, Y: y - top + down);
            pair.Place(at.X, at.Y);
            plain = Math.Min(plain, pair.Difference([]));
            var difference = pair.Difference(_lines[0]);
            if (difference < struck)
                (struck, best) = (difference, at);
            if (Math.Min(plain, struck) > MuchMore * reach)
                return new(plain, struck);
        }

        pair.Place(best.X, best.Y);
        foreach (var line in _lines.AsSpan(1))
            struck = Math.Min(struck, pair.Difference(line));
        return new(plain, struck);
    }

    // A mark, and the look at some place over it.
    private ref struct Pair(StruckLook look, ReadOnlySpan<float> own, Span<float> spare, int width)
    {
        private readonly ReadOnlySpan<float> _own = own;
        private readonly Span<float> _of = spare[..own.Length], _painted = spare[own.Length..^own.Length], _spare = spare[^own.Length..];
        private readonly (int Pixel, float Part)[] _covered = new (int, float)[look._longest];
        private readonly int _height = own.Length / width;
        private int _x, _y;
        private float _product;

        public void Place(int x, int y)
        {
            (_x, _y) = (x, y);
            _of.Clear();
            Overlay.Place(look._look, x, y, width, _of);
            _product = TensorPrimitives.Dot(_own, _of);
        }

        public readonly float Difference((int X, int Y, float Part)[] line)
        {
            const float Covered = 0.5f, Faintest = 0.4f, Strongest = 1.6f, FaintestLine = 0.5f;
            var (product, squares, ink, cover) = (_product, look._squares, 0f, 0f);
            var count = 0;
            foreach (var (x, y, part) in line)
            {
                var (column, row) = (x + _x, y + _y);
                if ((uint)column >= (uint)width || (uint)row >= (uint)_height)
                    continue;
                var pixel = row * width + column;
                _covered[count++] = (pixel, part);
                var (here, there) = (part * _own[pixel], _of[pixel]);
                (product, squares) = (product - here * there, squares - part * there * there);
                if (part > Covered)
                    (ink, cover) = (ink + here, cover + part * part);
            }

            var strength = Math.Clamp(product / Math.Max(1e-3f, squares), Faintest, Strongest);
            var dark = Math.Clamp(ink / Math.Max(1e-3f, cover), FaintestLine, 1);
            TensorPrimitives.Multiply(_of, strength, _painted);
            // Nothing is darker than ink.
            if (strength > 1)
                TensorPrimitives.Min(_painted, 1, _painted);
            foreach (var (pixel, part) in _covered.AsSpan(0, count))
                _painted[pixel] += part * (dark - _painted[pixel]);
            TensorPrimitives.Subtract(_own, _painted, _painted);
            Overlay.Blur(_painted, _spare, width);
            return TensorPrimitives.SumOfMagnitudes<float>(_painted) / (strength * Math.Max(1e-3f, look._ink));
        }
    }
}
