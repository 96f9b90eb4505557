namespace Companion.Engine.Planning;

/// <summary>Whether a puzzle needs a rule.</summary>
public enum Need
{
    /// <summary>Easier rules alone lead to the solution.</summary>
    Spare,

    /// <summary>Without it, and without anything harder, the ladder stops short, and there it is open.</summary>
    Needed,

    /// <summary>It is not open where the easier rules stop; harder rules come before it.</summary>
    Late,

    /// <summary>
    /// The way does not come by it: it is neither open where the easier rules stop nor the easiest after harder ones. It may be open
    /// elsewhere and be shown by choice.
    /// </summary>
    Never,
}
