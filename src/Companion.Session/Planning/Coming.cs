using Companion.Engine.Planning;

namespace Companion.Session.Planning;

/// <summary>When a featured rule is to be expected, the soonest first.</summary>
public enum Coming
{
    /// <summary>It is open now.</summary>
    Open,

    /// <summary>At most two easier steps lead to it.</summary>
    Near,

    /// <summary>More easier steps lead to it.</summary>
    Ahead,

    /// <summary>The easier steps that were walked do not lead to it, but it is open somewhere on the way to the full grid; see <see cref="Route"/>.</summary>
    Late,

    /// <summary>It is open nowhere on the way that was walked; steps in another order might still come by it.</summary>
    Never,

    /// <summary>It was shown; see <see cref="WayAhead.Waiting"/>.</summary>
    Shown,

    /// <summary>The ladder is cut so that it is not looked for.</summary>
    Off,
}
