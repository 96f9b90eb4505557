using System.Collections.Concurrent;
using Companion.Server.Chat;
using Companion.Server.Chat.Irc;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;

namespace Companion.Server.Tests.Chat;

/// <summary>The chat by itself, with a clock that stands still until it is moved on.</summary>
internal sealed class ChatHarness : IChatStatusOutput, IAsyncDisposable
{
    /// <summary>Long enough for a machine on which other things run; a test that needs it has failed.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly IrcChat _chat;

    private ChatHarness(IrcSettings settings, string? password, IChatListener listener) => _chat = new(
        new() { Irc = settings },
        new(password is null ? null : new Secret(password), null),
        new([listener], NullLogger<ChatIntake>.Instance),
        this,
        new Backoff(new Random(1)),
        Clock,
        NullLogger<IrcChat>.Instance);

    public FakeTimeProvider Clock { get; } = new();

    /// <summary>All that the presenter was told, in order.</summary>
    public ConcurrentQueue<ChatStatus> Told { get; } = new();

    /// <summary>What the presenter was told last.</summary>
    public ChatStatus Newest => Told.LastOrDefault() ?? new(ChatPhase.Connecting, "");

    public IChat Out => _chat;

    public static async Task<ChatHarness> Start(IrcSettings settings, IChatListener? listener = null, string? password = null)
    {
        var harness = new ChatHarness(settings, password, listener ?? new Echo());
        await harness._chat.StartAsync(TestContext.Current.CancellationToken);
        return harness;
    }

    /// <summary>Starts the chat and waits until it is in its channel.</summary>
    public static async Task<ChatHarness> Connect(IrcSettings settings, IChatListener? listener = null, string? password = null)
    {
        var harness = await Start(settings, listener, password);
        await harness.Tells(ChatPhase.Connected);
        return harness;
    }

    public ValueTask Show(ChatStatus status)
    {
        Told.Enqueue(status);
        return ValueTask.CompletedTask;
    }

    /// <summary>Waits until the newest status is of a phase, and moves the clock on meanwhile.</summary>
    public async Task<ChatStatus> Tells(ChatPhase phase, TimeSpan step = default)
    {
        await Until(() => Newest.Phase == phase && Newest.Text.Length > 0, step);
        return Newest;
    }

    /// <summary>Waits until the presenter is told this, and moves the clock on meanwhile.</summary>
    public Task Tells(string sentence, TimeSpan step = default) =>
        Until(() => Newest.Text.Contains(sentence, StringComparison.Ordinal), step);

    /// <summary>Waits until something holds, and moves the clock on meanwhile.</summary>
    public async Task Until(Func<bool> holds, TimeSpan step = default)
    {
        using var late = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        late.CancelAfter(Patience);
        try
        {
            while (!holds())
            {
                await Task.Delay(10, late.Token);
                if (step > TimeSpan.Zero)
                    Clock.Advance(step);
            }
        }
        catch (OperationCanceledException)
        {
            throw new TimeoutException($"It never held; the presenter was told:\n{string.Join('\n', Told)}");
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _chat.StopAsync(CancellationToken.None);
        _chat.Dispose();
    }
}
