using Companion.Sight.Reading;

namespace Companion.Sight.Tests.Reading;

public sealed class MemoTests
{
    private readonly Memo<int, string> _memo = new();
    private readonly List<int> _worked = [];

    [Fact]
    public void What_is_asked_for_in_every_round_is_worked_out_once()
    {
        for (var round = 0; round < 4; round++)
        {
            Assert.Equal("7", Ask(7));
            Assert.Equal("7", Ask(7));
            _memo.Next();
        }

        Assert.Equal([7], _worked);
    }

    [Fact]
    public void What_is_not_asked_for_in_a_round_is_forgotten()
    {
        Ask(7);
        _memo.Next();
        Ask(8);
        _memo.Next();
        Ask(7);
        Assert.Equal([7, 8, 7], _worked);
    }

    private string Ask(int key) => _memo.Of(key, from =>
    {
        _worked.Add(from);
        return $"{from}";
    });
}
