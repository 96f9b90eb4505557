using System.Collections.Immutable;
using Companion.Session.Asks.Answers;
using Companion.Session.Asks.Viewers;

namespace Companion.Session.Asks.Gathering;

/// <summary>A question with its answer, and those who have asked it so far.</summary>
/// <param name="prepared">The answer.</param>
/// <param name="first">The first who asked.</param>
/// <param name="readyAt">From when on it may be answered.</param>
internal sealed class Question(Prepared prepared, Asked first, DateTimeOffset readyAt)
{
    /// <summary>How many are named in an answer; of more, a line only says how many they are.</summary>
    public const int MostNames = 3;

    private readonly List<ViewerId> _viewers = [first.Viewer];
    private readonly List<string> _names = [first.Name];

    /// <summary>The answer.</summary>
    public Prepared Prepared => prepared;

    /// <summary>The way it came in.</summary>
    public Way Way => first.Way;

    /// <summary>From when on it may be answered.</summary>
    public DateTimeOffset ReadyAt => readyAt;

    /// <summary>Those who asked.</summary>
    public IReadOnlyList<ViewerId> Viewers => _viewers;

    /// <summary>One more asks the same.</summary>
    public void Join(Asked asked)
    {
        _viewers.Add(asked.Viewer);
        if (_names.Count <= MostNames)
            _names.Add(asked.Name);
    }

    /// <summary>What comes of it for those who asked.</summary>
    public Answered Answered(Answer answer) => new(
        Way, answer, [.. _viewers], _names.Count > MostNames ? ImmutableArray<string>.Empty : [.. _names]);
}
