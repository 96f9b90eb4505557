namespace Companion.Session.Views;

/// <summary>What a warning is about, most urgent first.</summary>
public enum WatchKind
{
    /// <summary>A digit stands twice in a house, a cell has no candidate left, or a digit no place in a house.</summary>
    HouseBroken,

    /// <summary>A digit disagrees with the only solution.</summary>
    WrongDigit,

    /// <summary>A strike or mark takes out a candidate of the only solution.</summary>
    WrongStrike,

    /// <summary>A mark says what the grid no longer allows.</summary>
    StaleMark,

    /// <summary>A featured rule has come open.</summary>
    FeaturedOpen,

    /// <summary>A block mark is down to one place: a free digit.</summary>
    FreeDigit,

    /// <summary>An easier deduction has been open for long while harder ones are worked.</summary>
    EasierOpen,

    /// <summary>What is on air or stands by has been carried out, passed, or no longer holds.</summary>
    AirOutdated,

    /// <summary>A featured rule is at most two easier steps away.</summary>
    FeaturedNear,

    /// <summary>A featured rule was open or ahead, and is not found on the way that is tried any more.</summary>
    FeaturedPassed,
}
