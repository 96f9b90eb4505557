using Companion.Drawing.Pictures;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Wire;

/// <summary>The cells that viewers call, as they stand by or are on air.</summary>
/// <param name="Cells">How many cells they are.</param>
/// <param name="Picture">What is drawn.</param>
public sealed record CalledWire(int Cells, Picture Picture)
{
    internal static CalledWire? Of(ValueArray<CalledCell> called, Voice voice) =>
        PictureOfThem(called, voice) is { } picture ? new(called.Count, picture) : null;

    /// <summary>What is drawn of them; null where there are none.</summary>
    internal static Picture? PictureOfThem(ValueArray<CalledCell> called, Voice voice) =>
        called.Count == 0 ? null : PictureOf.Called(called, voice.Wording.Fill("asks.called"));
}
