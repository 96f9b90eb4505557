using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.Access;
using Companion.Server.Live.Asks;
using Companion.Server.Live.Audience;
using Companion.Server.Live.Audience.Door;
using Companion.Server.Live.Following;
using Companion.Server.Live.Loop;
using Companion.Server.Shows;
using Companion.Server.Wire;
using Companion.Session.Asks.Delays;
using Companion.Session.Commands;
using Companion.Session.State;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Desk;

/// <summary>
/// What a panel can ask for. <c>DeskMethods</c> in <c>overlay/src/wireMethods.ts</c> says what each method does; cells come as names and
/// digits as numbers. <see cref="Permission"/> says who may.
/// </summary>
/// <param name="session">The session.</param>
/// <param name="asks">What viewers ask.</param>
/// <param name="boards">What viewers are shown.</param>
/// <param name="doors">Who may open the audience's page.</param>
/// <param name="link">Where viewers find it.</param>
/// <param name="questions">Answers questions about cells.</param>
/// <param name="vetter">Vets grids.</param>
/// <param name="shows">The kept shows.</param>
/// <param name="showDesk">Answers what is asked about them.</param>
/// <param name="screens">Follows the presenter's screen.</param>
/// <param name="voice">The words.</param>
/// <param name="ladder">The whole ladder.</param>
internal sealed partial class DeskHub(
    SessionLoop session,
    AskDesk asks,
    IAudienceBoards boards,
    DoorPump doors,
    AudienceLink link,
    CellQuestions questions,
    Vetter vetter,
    ShowLibrary shows,
    ShowDesk showDesk,
    ScreenDesk screens,
    Voice voice,
    Ladder ladder) : Hub<IDeskClient>
{
    /// <summary>Greets a panel with the session as it is.</summary>
    public override async Task OnConnectedAsync()
    {
        await Groups.AddToGroupAsync(Context.ConnectionId, Caller.ToString());
        await session.Greet(snapshot => Task.WhenAll(
            Clients.Caller.Desk(DeskWire.Of(snapshot, Caller, voice)),
            Clients.Caller.Cues(CueViews.Of(snapshot.State, voice)),
            Clients.Caller.Ladder(LadderView.Of(snapshot.State, ladder, voice)),
            Clients.Caller.RunSheet(RunSheetWire.Of(snapshot, voice)),
            snapshot.Scan is { } scan ? Clients.Caller.Next(PanelViews.Next(scan, voice)) : Task.CompletedTask,
            snapshot.Outlook is { } outlook ? Clients.Caller.Forecast(ForecastView.Of(outlook, voice)) : Task.CompletedTask));
        await Clients.Caller.Viewers(asks.View);
        await Clients.Caller.Door(doors.Of(boards.Current));
    }

    public Task<Reply> LoadPuzzle(string? grid, string? title, string? setter, string? link) =>
        Ask(_ => new LoadPuzzle(grid ?? "", title ?? "", setter ?? "", link ?? ""));

    public Task<Reply> PlaceDigit(string? cell, int digit) => Ask(_ => new PlaceDigit(Cell.Parse(cell ?? ""), Digit(digit)));

    public Task<Reply> EraseCells(string?[]? cells) => Ask(_ => new EraseCells(Cells(cells)));

    public Task<Reply> ToggleBlockMark(string?[]? cells, int digit) => Ask(_ => new ToggleBlockMark(Cells(cells), Digit(digit)));

    public Task<Reply> ToggleCellMark(string?[]? cells, int digit) => Ask(_ => new ToggleCellMark(Cells(cells), Digit(digit)));

    public Task<Reply> ToggleStrike(string?[]? cells, int digit) => Ask(_ => new ToggleStrike(Cells(cells), Digit(digit)));

    public Task<Reply> SettleMarks() => Ask(_ => new SettleMarks());

    public Task<Reply> Undo() => Ask(_ => new Undo());

    public Task<Reply> Redo() => Ask(_ => new Redo());

    public Task<Reply> ClearGrid() => Ask(_ => new ClearGrid());

    public Task<Reply> MarkUsed(string? id) => Ask(now => new MarkUsed(now.Named(id)));

    public Task<Reply> StandBy(string? id) => Ask(now => new StandBy(now.Named(id)));

    public Task<Reply> StandDown() => Ask(_ => new StandDown());

    public Task<Reply> NextGrade() => Ask(_ => new NextGrade());

    public Task<Reply> PreviousGrade() => Ask(_ => new PreviousGrade());

    public Task<Reply> ClearAir() => Ask(_ => new ClearAir());

    public Task<Reply> AllowCoHostOnAir(bool allowed) => Ask(_ => new AllowCoHostOnAir(allowed));

    public Task<Reply> PlaceFrame(string? scene, Frame? frame) =>
        Ask(_ => new PlaceFrame(scene ?? "", frame ?? throw new FormatException("A frame has left, top, width and height.")));

    public Task<Reply> ForgetScene(string? scene) => Ask(_ => new ForgetScene(scene ?? ""));

    public Task<Reply> ShowFrame(string? scene) => Ask(_ => new ShowFrame(scene));

    public Task<Reply> LimitAsks(bool open, int highest, bool quietOnAir) =>
        Ask(_ => new LimitAsks(new(open, (Grade)highest, quietOnAir)));

    public Task<Reply> SetDelay(int seconds) => Ask(_ => new SetDelay(Delay.OfSeconds(seconds)));

    public Task<Reply> UseMeasuredDelay() => Ask(_ => new UseMeasuredDelay(asks.View.Measured));

    public Task<Reply> ShowDelayCode() => Ask(_ => new ShowDelayCode(DelayCodes.Next()));

    public Task<Reply> HideDelayCode() => Ask(_ => new HideDelayCode());

    public Task<Reply> EndShow() => Ask(_ => new EndShow());

    public Task<Reply> Why(string? cell, int digit) => Task.FromResult(
        questions.Ask(Caller, Context.ConnectionId, () => new(Cell.Parse(cell ?? ""), Digit(digit)), Context.ConnectionAborted));

    private AccessRole Caller => Context.User!.Role();

    private Task<Reply> Ask(Func<Snapshot, Command> read) => session.Ask(Caller, read);

    private static CellSet Cells(string?[]? names) => CellSet.Of([.. (names ?? []).Select(name => Cell.Parse(name ?? ""))]);

    private static Digit Digit(int value) => value is >= 1 and <= Engine.Digit.Count
        ? Engine.Digit.Of(value)
        : throw new FormatException($"{value} is not a digit from 1 to 9.");
}
