namespace Companion.Server.Wire;

/// <summary>What an answer to a viewer's page is.</summary>
public enum AnswerKind
{
    /// <summary>Nothing is said.</summary>
    Nothing,

    /// <summary>A hint of a grade.</summary>
    Hint,

    /// <summary>Why a digit that stands there follows.</summary>
    Reason,

    /// <summary>A call was counted.</summary>
    Counted,

    /// <summary>A plain sentence, such as why there is no hint.</summary>
    Notice,
}
