using Companion.Drawing.Paper;

namespace Companion.Drawing.Tests.Paper;

public sealed class PageFlowTests
{
    [Fact]
    public void Strips_stand_one_below_the_other_until_the_page_is_full() =>
        Assert.Equal("0 40 | 0", Flow([Strip(40), Strip(40), Strip(40)]));

    [Fact]
    public void The_white_above_a_strip_is_left_out_at_the_top_of_a_page() =>
        Assert.Equal("0 50 | 0", Flow([Strip(40, gap: 10), Strip(40, gap: 10), Strip(40, gap: 10)]));

    [Fact]
    public void What_stays_with_the_next_goes_over_with_it() =>
        Assert.Equal("0 | 0 20 40", Flow([Strip(50), Strip(20, stays: true), Strip(20, stays: true), Strip(20)]));

    [Fact]
    public void What_belongs_together_and_is_more_than_a_page_is_broken_where_the_page_ends() =>
        Assert.Equal("0 60 | 0 60", Flow([Strip(60, stays: true), Strip(40, stays: true), Strip(60, stays: true), Strip(20)]));

    [Fact]
    public void A_strip_higher_than_a_page_has_one_to_itself() => Assert.Equal("0 | 0 | 0", Flow([Strip(10), Strip(150), Strip(10)]));

    [Fact]
    public void A_break_begins_another_page_but_not_two()
    {
        var flow = new PageFlow(100);
        flow.Break();
        flow.Add([Strip(10)]);
        flow.Break();
        flow.Break();
        flow.Add([Strip(10)]);

        Assert.Equal("0 | 0", Text(flow));
    }

    [Fact]
    public void What_waits_for_its_next_counts_as_taken()
    {
        var flow = new PageFlow(100);
        flow.Add([Strip(30), Strip(20, gap: 5, stays: true)]);

        Assert.Equal(45, flow.Room);
    }

    private static string Flow(IEnumerable<Strip> strips)
    {
        var flow = new PageFlow(100);
        flow.Add(strips);
        return Text(flow);
    }

    private static string Text(PageFlow flow) =>
        string.Join(" | ", flow.Pages().Select(page => string.Join(' ', page.Select(placed => placed.Top))));

    private static Strip Strip(float height, float gap = 0, bool stays = false) =>
        new(height, (_, _) => { }) { Gap = gap, StaysWithNext = stays };
}
