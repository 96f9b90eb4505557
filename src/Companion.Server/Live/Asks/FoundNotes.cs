using System.Threading.Channels;
using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Session.Commands;

namespace Companion.Server.Live.Asks;

/// <summary>What is to be kept of the viewers' calls, on its way from the desk of asks to the session. Never waits.</summary>
internal sealed class FoundNotes
{
    private readonly Channel<NoteFoundFirst> _notes = Channel.CreateUnbounded<NoteFoundFirst>(new() { SingleReader = true });

    /// <summary>Gives one to the session.</summary>
    /// <param name="note">The note.</param>
    public void Add(NoteFoundFirst note) => _notes.Writer.TryWrite(note);

    /// <summary>All of them, as they come.</summary>
    /// <param name="stop">Ends them.</param>
    public IAsyncEnumerable<NoteFoundFirst> All(CancellationToken stop) => _notes.Reader.ReadAllAsync(stop);
}

/// <summary>Has the session keep them.</summary>
/// <param name="notes">Where they come from.</param>
/// <param name="session">The session.</param>
internal sealed class FoundKeeper(FoundNotes notes, SessionLoop session) : BackgroundService
{
    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await foreach (var note in notes.All(stoppingToken))
            await session.Ask(AccessRole.Presenter, _ => note);
    }
}
