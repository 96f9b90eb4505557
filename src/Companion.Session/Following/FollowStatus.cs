namespace Companion.Session.Following;

/// <summary>How following the screen goes.</summary>
public enum FollowStatus
{
    /// <summary>What changes on the screen is entered.</summary>
    Following,

    /// <summary>The grid is not where it was, or is hidden: nothing is entered.</summary>
    GridNotFound,

    /// <summary>Some cells wait for the presenter; the others are entered.</summary>
    Unsure,

    /// <summary>Another puzzle is on the screen: nothing is entered until it is loaded.</summary>
    OtherPuzzle,
}
