namespace Companion.Session.Asks;

/// <summary>The words that viewers write after the prefix.</summary>
public enum AskWord
{
    /// <summary>A hint: <see cref="AskHint"/>.</summary>
    Hint,

    /// <summary>Why a digit follows: <see cref="AskWhy"/>.</summary>
    Why,

    /// <summary>"I have found it": <see cref="AskCall"/>.</summary>
    Call,

    /// <summary>How many of each digit remain: <see cref="AskLeft"/>.</summary>
    Left,

    /// <summary>Which puzzle it is: <see cref="AskPuzzle"/>.</summary>
    Puzzle,

    /// <summary>The code on the broadcast: <see cref="AskDelay"/>.</summary>
    Delay,
}
