namespace Companion.Engine.Rules;

/// <summary>
/// How long a rule takes to look for all its instances, by order of magnitude: what is quick is told first, and the rest follows.
/// </summary>
public enum Effort
{
    /// <summary>A pattern of fixed size: microseconds.</summary>
    Pattern,

    /// <summary>A search along links: up to milliseconds.</summary>
    Search,

    /// <summary>
    /// For boards on which nothing else helps: it may take a thousand times as long as all others together, may allocate, and may
    /// find less than all, as it says.
    /// </summary>
    LastResort,
}
