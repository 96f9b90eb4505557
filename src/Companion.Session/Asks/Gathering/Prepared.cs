using Companion.Session.Asks.Answers;

namespace Companion.Session.Asks.Gathering;

/// <summary>An answer that is ready to go out.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="Key">Equal for two who are to be answered the same, so that one answer does for both.</param>
/// <param name="Step">The deduction that it is a hint about, or null.</param>
internal sealed record Prepared(Answer Answer, object Key, string? Step = null)
{
    /// <summary>An answer that is the same for all to whom it says the same.</summary>
    public static Prepared Of(Answer answer) => new(answer, answer);

    /// <summary>An answer for one viewer, which is gathered with no other.</summary>
    public static Prepared Personal(Answer answer) => new(answer, new object());
}
