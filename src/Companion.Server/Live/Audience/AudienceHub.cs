using System.Buffers.Text;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Server.Live.Audience.Door;
using Companion.Server.Wire;
using Companion.Session.Asks;
using Companion.Session.Audience;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Audience;

/// <summary>
/// What a viewer's page can ask for. <c>AudienceMethods</c> in <c>overlay/src/wireAudience.ts</c> says what each method does. Whoever is
/// connected has come past <see cref="AudienceEntrance"/>.
/// </summary>
/// <param name="boards">The board as viewers see it.</param>
/// <param name="asks">Where asks are answered.</param>
/// <param name="guests">Those who are connected.</param>
/// <param name="slices">Those who are sent to together.</param>
internal sealed class AudienceHub(IAudienceBoards boards, IAudienceAsks asks, Guests guests, Slices slices) : Hub<IAudienceClient>
{
    /// <summary>Greets a viewer with the newest view, and with what comes while that is being sent.</summary>
    public override async Task OnConnectedAsync()
    {
        guests.Welcome(Context, boards);
        await Groups.AddToGroupAsync(Context.ConnectionId, slices.Next());
        AudienceView shown;
        do
        {
            shown = boards.Current;
            await Clients.Caller.Board(shown);
        }
        while (shown != (object)boards.Current);
    }

    /// <inheritdoc/>
    public override Task OnDisconnectedAsync(Exception? exception)
    {
        guests.Forget(Context.ConnectionId);
        return Task.CompletedTask;
    }

    public Task<AudienceAnswer> Hint(string? cell, int? grade) =>
        Ask(() => new AskHint(cell is null ? null : Cell.Parse(cell), grade is { } wanted ? GradeOf(wanted) : null));

    public Task<AudienceAnswer> Why(string? cell) => Ask(() => new AskWhy(Cell.Parse(cell ?? "")));

    public Task<AudienceAnswer> Call(string? cell, int? digit) =>
        Ask(() => new AskCall(Cell.Parse(cell ?? ""), digit is { } found ? DigitOf(found) : null));

    // Whoever comes back, as after a reload, is the same viewer. Who sends a name that no page of ours makes is one a connection.
    private string Viewer => Context.GetHttpContext()?.Request.Query["viewer"].ToString() is { Length: 22 } sent && Base64Url.IsValid(sent)
        ? sent
        : Context.ConnectionId;

    private async Task<AudienceAnswer> Ask(Func<Ask> read)
    {
        if (!Guests.MayAsk(Context))
            return AudienceAnswer.Notice(AudienceSentences.TooManyAsks);
        try
        {
            return await asks.Ask(Viewer, read(), Context.ConnectionAborted);
        }
        catch (FormatException unreadable)
        {
            return AudienceAnswer.Notice(unreadable.Message);
        }
        catch (OperationCanceledException)
        {
            // The page was closed.
            return AudienceAnswer.Nothing;
        }
    }

    private static Grade GradeOf(int value) =>
        Enum.IsDefined((Grade)value) ? (Grade)value : throw new FormatException($"{value} is not a grade from 1 to 4.");

    private static Digit DigitOf(int value) =>
        value is >= 1 and <= Digit.Count ? Digit.Of(value) : throw new FormatException($"{value} is not a digit from 1 to 9.");
}
