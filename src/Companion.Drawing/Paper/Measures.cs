using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>The measures of a page, in points of 1/72 inch.</summary>
internal static class Measures
{
    /// <summary>Nothing is drawn nearer to an edge: 16 mm, more than any office printer leaves white.</summary>
    internal const float Margin = 45;

    /// <summary>The size of running words.</summary>
    internal const float Text = 9.5f;

    /// <summary>The size of words that say less, and of the foot.</summary>
    internal const float Small = 8;

    /// <summary>The size of the words below a board in a grid.</summary>
    internal const float Caption = 7.6f;

    /// <summary>The same where they are long.</summary>
    internal const float SmallCaption = 7;

    /// <summary>No letter is smaller. Common practice for print that is read by all.</summary>
    internal const float Smallest = 6;

    internal const float HeadingText = 11.5f;

    internal const float TitleText = 17;

    /// <summary>From one line to the next, in sizes of its letters.</summary>
    internal const float Leading = 1.35f;

    /// <summary>From the top of a line to where its letters stand, in sizes of its letters.</summary>
    internal const float BaseLine = 1.02f;

    /// <summary>How far steps and points are indented.</summary>
    internal const float Indent = 30;

    /// <summary>Between two blocks.</summary>
    internal const float Gap = 7;

    /// <summary>Between two figures, or a figure and the words beside it.</summary>
    internal const float FigureGap = 18;

    /// <summary>The foot with the white above it.</summary>
    internal const float Foot = 22;

    /// <summary>What the blocks may take of a page.</summary>
    internal static SKRect Body(PaperSize size) =>
        new(Margin, Margin, size.Width - Margin, size.Height - Margin - Foot);
}
