namespace Companion.Session.State;

/// <summary>A talking point in the co-host's own words.</summary>
/// <param name="Id">See <see cref="CallOut"/>.</param>
/// <param name="Version">See <see cref="CallOut"/>.</param>
/// <param name="Stage">See <see cref="CallOut"/>.</param>
/// <param name="Text">The words, one line.</param>
public sealed record TextCallOut(int Id, int Version, CueStage Stage, string Text) : CallOut(Id, Version, Stage)
{
    /// <summary>The longest text, in characters: about half a minute of speech.</summary>
    public const int LongestText = 400;
}
