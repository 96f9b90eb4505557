using Companion.Drawing.Pictures;
using Companion.Drawing.Pictures.Layers;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Drawing.Tests.Pictures;

public class MarkTests
{
    [Theory]
    [InlineData("r1c1=58", "", "", "mark r1c1=5 r1c1=8")]
    [InlineData("r1c1=58", "r1c1=8", "", "mark r1c1=5")]
    [InlineData("r1c1=58 r1c4=5", "", "r1c1=5", "mark r1c4=5")]
    public void A_candidate_under_a_slash_or_in_a_cell_under_a_lozenge_has_no_mark(
        string standing, string removes, string places, string drawn)
    {
        var exhibit = new Exhibit("")
        {
            Candidates = Standing.Board(standing).Candidates,
            Removes = CandidateSet.Parse(removes),
            Places = CandidateSet.Parse(places),
        };

        Assert.Equal(drawn, PictureText.Of(new([.. new MarkLayer().ShapesOf(exhibit)], "")));
    }

    [Fact]
    public void The_ends_of_links_are_marked_wherever_they_lie()
    {
        var link = new Link(Candidate.Parse("r1c1=5"), Candidate.Parse("r9c1=5"), IsStrong: false);

        var marks = new MarkLayer().ShapesOf(new Exhibit("") { Links = [link] });

        Assert.Equal("mark r1c1=5 r9c1=5", PictureText.Of(new([.. marks], "")));
    }
}
