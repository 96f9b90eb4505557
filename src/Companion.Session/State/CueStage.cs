namespace Companion.Session.State;

/// <summary>How far a call-out has come on its way from the co-host to the presenter.</summary>
public enum CueStage
{
    /// <summary>On the list; the presenter need not look at it.</summary>
    Listed,

    /// <summary>The next one: the presenter makes ready.</summary>
    StandBy,

    /// <summary>Now: the presenter says it or takes it on air.</summary>
    Go,

    /// <summary>Said, or taken on air.</summary>
    Done,
}
