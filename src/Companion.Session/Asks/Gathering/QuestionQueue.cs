namespace Companion.Session.Asks.Gathering;

/// <summary>
/// Questions that wait for their answers: in a chat those who ask the same are answered together, the same is not said again too
/// soon, and answers keep a distance. By a way that is not shared each is answered at once.
/// </summary>
/// <param name="settings">The pauses.</param>
internal sealed class QuestionQueue(AskSettings settings)
{
    // More different questions than a chat could be answered in a minute.
    private const int MostQuestions = 64;
    private const int MostSaid = 256;

    // What waits for longer than this after it was ready has lost its point.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly List<Question> _waiting = [];
    private readonly List<Question> _stale = [];
    private readonly LinkedList<(Way Way, object Key, DateTimeOffset At)> _said = new();
    private readonly Dictionary<Way, DateTimeOffset> _quietUntil = [];

    /// <summary>When the next question may be answered, or null where none waits.</summary>
    public DateTimeOffset? NextAt =>
        _stale.Count > 0 ? DateTimeOffset.MinValue : _waiting.Count == 0 ? null : _waiting.Min(ReadyAt);

    /// <summary>Puts a question in the queue, or the viewer to those who ask the same already.</summary>
    /// <returns>Whether it will be answered; false where too many wait.</returns>
    public bool Add(Asked asked, Prepared prepared)
    {
        var same = asked.Way.IsShared ? _waiting.Find(other => other.Way == asked.Way && other.Prepared.Key.Equals(prepared.Key)) : null;
        if (same is not null)
            same.Join(asked);
        else if (_waiting.Count < MostQuestions)
            _waiting.Add(new(prepared, asked, ReadyAt(asked, prepared)));
        else
            return false;
        return true;
    }

    /// <summary>Takes the next question that may be answered now out of the queue, or null.</summary>
    /// <param name="now">The time.</param>
    public Question? Next(DateTimeOffset now)
    {
        var next = _waiting.Where(question => ReadyAt(question) <= now).MinBy(question => question.ReadyAt);
        if (next is not null)
            _waiting.Remove(next);
        return next;
    }

    /// <summary>Takes the questions out that have waited too long, or were made stale.</summary>
    /// <param name="now">The time.</param>
    public IReadOnlyList<Question> TakeStale(DateTimeOffset now)
    {
        List<Question> stale = [.. _stale, .. _waiting.Where(question => now - question.ReadyAt > Patience)];
        _stale.Clear();
        _waiting.RemoveAll(stale.Contains);
        return stale;
    }

    /// <summary>A question was answered; from now on the pauses run.</summary>
    public void Said(Question question, DateTimeOffset now)
    {
        if (!question.Way.IsShared)
            return;
        _quietUntil[question.Way] = now + TimeSpan.FromSeconds(settings.ChatPauseSeconds);
        _said.AddFirst((question.Way, question.Prepared.Key, now));
        if (_said.Count > MostSaid)
            _said.RemoveLast();
    }

    /// <summary>None of the questions that wait is to be answered any more.</summary>
    public void MakeStale()
    {
        _stale.AddRange(_waiting);
        _waiting.Clear();
        _said.Clear();
    }

    private DateTimeOffset ReadyAt(Question question) =>
        question.Way.IsShared && _quietUntil.GetValueOrDefault(question.Way) is var until && until > question.ReadyAt
            ? until
            : question.ReadyAt;

    private DateTimeOffset ReadyAt(Asked asked, Prepared prepared)
    {
        if (!asked.Way.IsShared)
            return asked.At;
        var gathered = asked.At + TimeSpan.FromSeconds(settings.GatherSeconds);
        var last = _said.FirstOrDefault(said => said.Way == asked.Way && said.Key.Equals(prepared.Key));
        var again = last.At + TimeSpan.FromSeconds(settings.RepeatPauseSeconds);
        return last.Key is not null && again > gathered ? again : gathered;
    }
}
