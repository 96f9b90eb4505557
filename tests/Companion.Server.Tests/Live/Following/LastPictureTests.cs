using System.Runtime.CompilerServices;
using Companion.Engine;
using Companion.Server.Access;
using Companion.Server.Live.Following;
using Companion.Server.Tests.Running;
using Companion.Sight;

namespace Companion.Server.Tests.Live.Following;

/// <summary>The last picture is in memory while its page is there and follows, and no longer.</summary>
public sealed class LastPictureTests
{
    // Of a blank picture, in which a grid can be watched as well.
    private static readonly GridPlace Place = new(new(10, 10), new(110, 10), new(110, 110), new(10, 110));

    [Fact]
    public void It_is_remembered_from_one_look_to_the_next_and_forgotten_on_demand()
    {
        var grid = new ScreenReader().Watch();
        var first = grid.Read(Blank(), Place);
        Assert.Same(first, grid.Read(Blank(), Place));

        grid.Forget();
        Assert.NotSame(first, grid.Read(Blank(), Place));
    }

    [Fact]
    public async Task It_is_forgotten_when_a_page_of_the_presenters_has_gone_and_one_that_is_back_goes_on()
    {
        await using var screen = await FollowedScreen.Start();
        await screen.Look();
        await using (await screen.Companion.OpenDesk(AccessRole.CoHost))
            Assert.Equal(0, screen.Reader.Forgotten);
        await using (await screen.Companion.OpenDesk())
            Assert.Equal(0, screen.Reader.Forgotten);
        await RunningCompanion.Until(() => screen.Reader.Forgotten == 1);

        await screen.Look();
    }

    [Fact]
    public void Nothing_of_it_is_reachable_any_more_when_its_page_has_stopped()
    {
        using var desk = new ScreenDesk(null!, new ForgetfulReader(), TimeProvider.System);
        desk.Start("page", withMarks: true);
        var grid = ForgetfulReader.Last!;
        Assert.True(IsAlive(grid));

        desk.Stop("page");
        Assert.False(IsAlive(grid));
        GC.KeepAlive(desk);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static bool IsAlive(WeakReference grid)
    {
        GC.Collect();
        return grid.IsAlive;
    }

    private static Frame Blank()
    {
        var pixels = new byte[4 * 120 * 120];
        pixels.AsSpan().Fill(255);
        return new(120, 120, pixels);
    }

    /// <summary>Holds what it gives out by nothing that would keep it.</summary>
    private sealed class ForgetfulReader : IScreenReader
    {
        public static WeakReference? Last { get; private set; }

        public GridPlace? Find(Frame frame) => null;

        [MethodImpl(MethodImplOptions.NoInlining)]
        public IWatchedGrid Watch()
        {
            var grid = new ScreenReader().Watch();
            Last = new(grid);
            return grid;
        }

        public void Teach(GlyphImage glyph, Digit digit)
        {
        }
    }
}
