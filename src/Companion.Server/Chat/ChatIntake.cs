using System.Collections.Immutable;

namespace Companion.Server.Chat;

/// <summary>
/// What every way in leads to: passes on the lines that are worth hearing, and gathers the answers. A listener that fails costs its
/// own answers and nothing else.
/// </summary>
internal sealed partial class ChatIntake(IEnumerable<IChatListener> listeners, ILogger<ChatIntake> log)
{
    private readonly IChatListener[] _listeners = [.. listeners];
    private readonly SeenIds _seen = new(1000);

    /// <summary>Has a line heard.</summary>
    /// <param name="line">The line.</param>
    /// <param name="stop">Signalled when an answer is no longer wanted.</param>
    /// <returns>What to say in answer; empty for nothing.</returns>
    public async ValueTask<ImmutableArray<string>> Hear(ChatLine line, CancellationToken stop)
    {
        if (line.IsFromBot || line.Text.Length == 0 || (line.MessageId is { } id && !_seen.Add($"{line.Source} {id}")))
            return [];
        List<string> answers = [];
        foreach (var listener in _listeners)
        {
            try
            {
                answers.AddRange(await listener.Hear(line, stop));
            }
            catch (Exception failure) when (failure is not OperationCanceledException)
            {
                ListenerFailed(listener.GetType().Name, failure);
            }
        }

        return [.. answers.Select(ChatText.Sayable).Where(answer => answer.Length > 0)];
    }

    [LoggerMessage(LogLevel.Error, "{Listener} failed at a line of the chat; the chat goes on.")]
    private partial void ListenerFailed(string listener, Exception failure);
}
