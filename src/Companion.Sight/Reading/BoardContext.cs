using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>
/// Reads what is unsure by what stands beside it: a mark by the others of its cell and by what the marks of the board keep to, a big digit by
/// those of its houses. That tells what to propose and never makes anything surer: what is read otherwise for its context, and what is sure
/// and does not fit its context, is held back.
/// </summary>
internal sealed class BoardContext
{
    // How likely a digit must be by its look to be proposed where the look is rather that of nothing, and one at the place of that digit.
    private const float LeastHint = 0.15f, LeastHintAtPlace = 0.03f;

    private readonly DigitSet[] _seen = new DigitSet[Cell.Count];
    private readonly MarkHabits _habits;

    private BoardContext(IReadOnlyList<CellDigits> cells)
    {
        foreach (var (cell, big, _, _) in cells)
        {
            if (big is not { IsSure: true })
                continue;
            foreach (var peer in cell.Peers)
                _seen[peer.Index] = _seen[peer.Index].With(big.Reading.Digit!.Value);
        }

        _habits = MarkHabits.Of(cells, _seen);
    }

    /// <summary>Applies to all digits of a board what the others tell of them.</summary>
    /// <param name="cells">The 81 cells.</param>
    public static void Apply(IReadOnlyList<CellDigits> cells)
    {
        var context = new BoardContext(cells);
        foreach (var (cell, big, read, unread) in cells)
        {
            if (big is { IsSure: false })
                context.Read(big, cell);
            var marks = context.WithGuesses(read, unread);
            if (marks.Any(mark => !mark.IsSure || context.IsMisplaced(mark)))
                context.Read(marks, cell);
            context.Doubt(marks);
        }
    }

    private bool IsMisplaced(Sign mark) => _habits.Places?.At(mark) is { } digit && digit != mark.Reading.Digit;

    // The marks of a cell and what is about as high as marks: beside a sure one that is rather a mark than nothing, where its look gives a
    // hint of a digit that is not there yet.
    private IReadOnlyList<Sign> WithGuesses(IReadOnlyList<Sign> marks, IReadOnlyList<Sign> unread)
    {
        var sure = DigitSet.Of([.. marks.Where(mark => mark.IsSure).Select(mark => mark.Reading.Digit!.Value)]);
        var guessed = unread.Where(sign => sure != DigitSet.All && _habits.IsAsHigh(sign) && Guess(sign, sure)).ToList();
        return guessed.Count > 0 ? [.. ReadingOrder.Of(marks.Concat(guessed))] : marks;
    }

    private bool Guess(Sign sign, DigitSet sure)
    {
        if (sign.Alone.Reading.Odds is not { IsDefault: false } odds)
            return false;
        var (digit, least) = _habits.Places is { } places
            ? (places.At(sign), LeastHintAtPlace)
            : ((~sure).MaxBy(other => odds[other.Index]), sign.Reading.Certainty < Siblings.Halfway ? LeastHint : 1);
        if (digit is not { } hinted || sure.Contains(hinted) || odds[hinted.Index] < least)
            return false;
        sign.Reading = new(hinted, odds[hinted.Index]);
        return true;
    }

    private void Read(Sign big, Cell cell)
    {
        if (!_seen[cell.Index].Contains(big.Reading.Digit!.Value))
            return;
        var belief = Unseen(Belief.In(big), cell);
        Propose(big, Array.IndexOf(belief, belief.Max()));
    }

    private void Read(IReadOnlyList<Sign> marks, Cell cell)
    {
        var digits = MarkDecoding.Likeliest([.. marks.Select(mark => Expected(mark, cell))], _habits.IsAscending);
        for (var index = 0; index < digits.Length; index++)
            Propose(marks[index], digits[index]);
    }

    // What stands at the place of a digit is that digit sooner than any other, whatever its shape says.
    private float[] Expected(Sign mark, Cell cell)
    {
        var belief = Belief.In(mark);
        if (_habits.Places?.At(mark) is { } place)
        {
            belief = Array.ConvertAll(belief, part => part * MarkDecoding.Unusual);
            belief[place.Index] = 1;
        }

        return _habits.IsUnseen && !mark.IsSure ? Unseen(belief, cell) : belief;
    }

    private float[] Unseen(float[] belief, Cell cell)
    {
        var seen = _seen[cell.Index];
        return [.. belief.Select((part, digit) => seen.Contains(Digit.Of(digit + 1)) ? part * MarkDecoding.Unusual : part)];
    }

    private static void Propose(Sign sign, int index)
    {
        var digit = Digit.Of(index + 1);
        if (digit == sign.Reading.Digit)
            return;
        // Two witnesses have settled it, whatever the digit is; or what it is most like tells.
        var isStruck = !sign.Around.Odds.IsDefault ? sign.IsStruck
            : digit == sign.Likest.Digit ? sign.Likest.IsStruck : sign.Alone.IsStruck;
        (sign.Reading, sign.IsStruck) = (new(digit, Math.Min(sign.Reading.Certainty, Siblings.Doubted)), isStruck);
    }

    // Of two sure marks out of order nobody knows which one is wrong, or whether the presenter wrote them so.
    private void Doubt(IReadOnlyList<Sign> marks)
    {
        if (!_habits.IsAscending)
            return;
        foreach (var (one, next) in marks.Zip(marks.Skip(1)).Where(pair => pair.First.Reading.Digit!.Value.Index > pair.Second.Reading.Digit!.Value.Index).ToList())
        {
            foreach (var mark in (Sign[])[one, next])
                mark.Reading = mark.Reading with { Certainty = Math.Min(mark.Reading.Certainty, Siblings.Doubted) };
        }
    }
}
