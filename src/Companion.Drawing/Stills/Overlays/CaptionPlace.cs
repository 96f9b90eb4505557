using Companion.Session.State;

namespace Companion.Drawing.Stills.Overlays;

/// <summary>At which edge of its room a caption stands.</summary>
internal enum CaptionSide
{
    /// <summary>Below the board, at the room's top.</summary>
    Below,

    /// <summary>Above the board, at the room's foot.</summary>
    Above,

    /// <summary>Left of the board, at the room's foot and towards the board.</summary>
    Left,

    /// <summary>Right of the board, at the room's foot and towards the board.</summary>
    Right,

    /// <summary>Over the foot of the board.</summary>
    Over,
}

/// <summary>
/// Where the overlay's caption goes, in shares of the picture: the page's rules, so that a still has it where it was on air. Below
/// the board, else above it, else beside it on the wider side, else over its foot; the first in which all the words fit inside the safe area.
/// </summary>
/// <param name="Side">The edge.</param>
/// <param name="Room">The room.</param>
internal sealed record CaptionPlace(CaptionSide Side, Frame Room)
{
    /// <summary>Size of the caption's letters, as a share of the picture's height.</summary>
    internal const double LetterHeight = 0.034;

    // Graphics keep this far from every edge (EBU R 95).
    private const double Safe = 0.05;
    private const double Gap = 0.012;
    private const double LineHeight = LetterHeight * 1.3;

    // Padding and edges of the plate, above and below together.
    private const double Plate = LetterHeight * 1.1;

    // Mean width of a letter of a heavy sans serif, as a share of its height.
    private const double LetterWidth = 0.56;

    /// <summary>Finds it.</summary>
    /// <param name="frame">The board's place.</param>
    /// <param name="letters">How many letters the caption has.</param>
    /// <param name="aspect">Width of the picture over its height.</param>
    internal static CaptionPlace Of(Frame frame, int letters, double aspect) =>
        new[] { Below(frame), Above(frame) }.Concat(Beside(frame)).FirstOrDefault(place => place.Fits(letters, aspect))
        ?? Over(frame, letters, aspect);

    private static CaptionPlace Below(Frame frame)
    {
        var (left, width) = Across(frame);
        var top = frame.Top + frame.Height + Gap;
        return new(CaptionSide.Below, new(left, top, width, 1 - Safe - top));
    }

    private static CaptionPlace Above(Frame frame)
    {
        var (left, width) = Across(frame);
        return new(CaptionSide.Above, new(left, Safe, width, frame.Top - Gap - Safe));
    }

    private static CaptionPlace[] Beside(Frame frame)
    {
        const double Height = 1 - 2 * Safe;
        var rightEdge = frame.Left + frame.Width + Gap;
        var left = new CaptionPlace(CaptionSide.Left, new(Safe, Safe, frame.Left - Gap - Safe, Height));
        var right = new CaptionPlace(CaptionSide.Right, new(rightEdge, Safe, 1 - Safe - rightEdge, Height));
        return left.Room.Width > right.Room.Width ? [left, right] : [right, left];
    }

    // Nowhere else: the board gives way to the words at its foot.
    private static CaptionPlace Over(Frame frame, int letters, double aspect)
    {
        var (left, width) = Across(frame);
        var height = Math.Min(1 - 2 * Safe, HeightOf(letters, width, aspect));
        return new(CaptionSide.Over, new(left, 1 - Safe - height, width, height));
    }

    // As wide as the board or, where that is narrow, wider, but inside the safe area.
    private static (double Left, double Width) Across(Frame frame)
    {
        var width = Math.Min(1 - 2 * Safe, Math.Max(frame.Width, 0.5));
        var middle = frame.Left + frame.Width / 2;
        return (Math.Min(Math.Max(middle - width / 2, Safe), 1 - Safe - width), width);
    }

    // A column that is too narrow breaks every word.
    private bool Fits(int letters, double aspect) =>
        Room.Width * aspect >= LetterHeight * 8 && HeightOf(letters, Room.Width, aspect) <= Room.Height;

    private static double HeightOf(int letters, double width, double aspect)
    {
        var perLine = Math.Max(1, Math.Floor((width * aspect - 1.4 * LetterHeight) / (LetterHeight * LetterWidth)));
        return Math.Ceiling(letters / perLine) * LineHeight + Plate;
    }
}
