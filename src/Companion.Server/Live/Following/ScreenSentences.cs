namespace Companion.Server.Live.Following;

/// <summary>What a page is told whose picture is not taken.</summary>
internal static class ScreenSentences
{
    /// <summary>Another page follows, or none.</summary>
    public const string NotFollowing = "This page does not follow the screen any more: begin again with Follow my screen.";

    /// <summary>Pictures come faster than they are read.</summary>
    public const string TooMany = "Pictures come faster than they can be read: send the next one a little later.";

    /// <summary>The body is no picture.</summary>
    public const string NoPicture = "This is no picture that can be read: send a PNG, a JPEG or a WebP of a bounded size.";

    /// <summary>The body is a change of a picture that is not in memory any more.</summary>
    public const string SendWhole = "The picture that this is a change of is forgotten: send the whole one.";

    /// <summary>The corners make no sense.</summary>
    public const string NoCorners = "A grid has four corners inside the picture, clockwise and not too close together: send eight numbers.";
}
