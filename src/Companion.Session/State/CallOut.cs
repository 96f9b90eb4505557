namespace Companion.Session.State;

/// <summary>One item of the cue list: what the presenter may say next.</summary>
/// <param name="Id">Its number in the session, 1-based, never given twice.</param>
/// <param name="Version">
/// How often its stage, words or grade were changed. Whoever changes it names the version that they saw; a move changes nothing in it.
/// </param>
/// <param name="Stage">How far it has come.</param>
public abstract record CallOut(int Id, int Version, CueStage Stage)
{
    /// <summary>The first version.</summary>
    public const int FirstVersion = 1;

    /// <summary>The call-out at another stage.</summary>
    public CallOut At(CueStage stage) => this with { Stage = stage, Version = Version + 1 };
}
