namespace Companion.Engine.Planning;

/// <summary>When a featured rule is to turn up on a planned route. The default value is as late as it can.</summary>
public enum Timing
{
    /// <summary>As late as it can: where nothing easier is open, or where easier rules are about to take its use away.</summary>
    Late,

    /// <summary>As soon as it is open.</summary>
    Early,
}
