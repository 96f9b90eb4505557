using System.Text.Json;
using Companion.Server.Shows;
using Companion.Server.Tests.Running;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Live;

/// <summary>Notes are kept with the puzzle, whatever show it is loaded in.</summary>
public sealed class NotesKeptTests : IDisposable
{
    private const string First = "r1c1=4";

    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task They_come_with_the_puzzle_in_a_later_show_after_a_restart_and_the_show_replays_on_its_own()
    {
        await using (var companion = await RunningCompanion.Start(_folder.Path))
        {
            await using var presenter = await companion.OpenDesk();
            await Load(presenter, Grids.Textbook);
            await presenter.Do("NoteStep", First, "", "Slowly");
            await Load(presenter, Grids.EssayOne);
            Assert.Empty(companion.Session.State.Notes.Notes);
            await presenter.Do("EndShow");
        }

        await using var again = await RunningCompanion.Start(_folder.Path);
        await using var later = await again.OpenDesk();
        await Load(later, Grids.Textbook);

        var state = again.Session.State;
        Assert.Equal("Slowly", Assert.Single(state.Notes.Notes).Text);
        Assert.Equal(state, again.Services.GetRequiredService<ShowLibrary>().Open("latest").Show.Last);
        var view = await later.Sees("RunSheet", view => view.GetProperty("sheet").ValueKind == JsonValueKind.Object
            && view.GetProperty("sequence").GetInt64() >= state.Sequence);
        Assert.Contains("Slowly", view.GetProperty("notes").EnumerateArray().Select(note => note.GetString()));
    }

    [Fact]
    public async Task What_was_taken_away_stays_away()
    {
        await using var companion = await RunningCompanion.Start(_folder.Path);
        await using var presenter = await companion.OpenDesk();
        await Load(presenter, Grids.Textbook);
        await presenter.Do("NoteStep", First, "", "Slowly");
        await presenter.Do("NoteStep", First, "", "");

        await presenter.Do("BeginShow", "");
        await Load(presenter, Grids.Textbook);

        Assert.Empty(companion.Session.State.Notes.Notes);
    }

    [Fact]
    public async Task A_show_that_is_reopened_has_the_newest_ones_and_an_undo_brings_the_newest_of_the_puzzle_before()
    {
        await using var companion = await RunningCompanion.Start(_folder.Path);
        await using var presenter = await companion.OpenDesk();
        await Load(presenter, Grids.Textbook);
        await presenter.Do("NoteStep", First, "", "Slowly");
        await Load(presenter, Grids.EssayOne);
        await presenter.Do("NoteStep", "r5c5=5", "", "In the middle");
        await presenter.Do("BeginShow", "");
        await Load(presenter, Grids.Textbook);
        await presenter.Do("NoteStep", First, "", "Quickly");
        await Load(presenter, Grids.EssayOne);
        await presenter.Do("NoteStep", "r5c5=5", "", "");

        await presenter.Do("ReopenShow", 1);
        Assert.Empty(companion.Session.State.Notes.Notes);

        await presenter.Do("Undo");
        Assert.Equal("Quickly", Assert.Single(companion.Session.State.Notes.Notes).Text);
    }

    public void Dispose() => _folder.Dispose();

    private static Task Load(OpenPage presenter, string grid) => presenter.Do("LoadPuzzle", grid, "", "", "");
}
