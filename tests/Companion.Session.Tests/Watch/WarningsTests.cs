using Companion.Session.Views;

namespace Companion.Session.Tests.Watch;

public sealed class WarningsTests
{
    [Fact]
    public void Without_a_puzzle_there_is_nothing_to_warn_of() => Assert.Empty(new PlayedSession().Warnings());

    [Fact]
    public void The_most_urgent_comes_first()
    {
        var session = PlayedSession.Of(Puzzles.Easy)
            .Block("r1c2 r2c3", 4).List("r2c8", "678").Settle().Place("r2c2", 6).Place("r1c1", 3);

        Assert.Equal(
            [WatchKind.HouseBroken, WatchKind.WrongDigit, WatchKind.WrongStrike, WatchKind.StaleMark],
            session.Warnings().Select(note => note.Kind));
    }

    [Theory]
    [MemberData(nameof(ReplayTests.FewSeeds), MemberType = typeof(ReplayTests))]
    public void On_any_session_every_warning_is_a_sentence_about_cells(int seed) =>
        RandomSession.Of(seed, commands: 40, afterEach: session =>
        {
            foreach (var note in session.Warnings())
            {
                Assert.NotEmpty(note.Cells);
                Assert.EndsWith(".", note.Text, StringComparison.Ordinal);
                Assert.InRange(note.Entries, 0, session.State.Entries);
            }
        });
}
