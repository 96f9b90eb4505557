using System.Globalization;
using Companion.Server.Access;
using Companion.Server.Wire;
using Companion.Session.Commands;

namespace Companion.Server.Live.Desk;

/// <content>What a panel can ask for about shows and their recordings.</content>
internal sealed partial class DeskHub
{
    public Task<Reply> BeginShow(string? title) => Ask(_ => new BeginShow(title ?? ""));

    public async Task<Reply> ReopenShow(int show)
    {
        try
        {
            if (Caller != AccessRole.Presenter)
                return new("Only the presenter may do this: ask the presenter.", session.Current.State.Sequence);
            // Read before its turn: the session does not wait for it.
            var opened = await Task.Run(() => shows.Open(show.ToString(CultureInfo.InvariantCulture)), Context.ConnectionAborted);
            return await Ask(_ => new ReopenShow(opened.Show.Title, new(opened.Show.Events)));
        }
        catch (PlainException plain)
        {
            return new(plain.Message, session.Current.State.Sequence);
        }
    }

    public Task<Reply> StartRecording() => Ask(_ => new StartRecording());

    public Task<Reply> PauseRecording() => Ask(_ => new PauseRecording());

    public Task<Reply> ResumeRecording() => Ask(_ => new ResumeRecording());

    public Task<Reply> StopRecording() => Ask(_ => new StopRecording());

    public Task<Reply> Shows() => Task.FromResult(showDesk.List(Caller, Context.ConnectionId));

    public Task<Reply> Chapters(int show) => Task.FromResult(showDesk.Chapters(Caller, Context.ConnectionId, show));

    public Task<Reply> SaveChapters(int show, ChaptersWire.Mark?[]? chapters) =>
        Task.FromResult(showDesk.SaveChapters(Caller, Context.ConnectionId, show, chapters));

    public Task<Reply> SetOffset(int show, double seconds) =>
        Task.FromResult(showDesk.SetOffset(Caller, Context.ConnectionId, show, seconds));

    public Task<Reply> WriteChapters(int show, string? form, string? rate) =>
        Task.FromResult(showDesk.WriteChapters(Caller, Context.ConnectionId, show, form, rate));

    public Task<Reply> ExportShow(int show) => Task.FromResult(showDesk.Export(Caller, Context.ConnectionId, show));
}
