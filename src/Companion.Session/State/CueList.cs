namespace Companion.Session.State;

/// <summary>
/// What co-hosts have written down for the presenter to say, in order. Immutable, compared by value.
/// </summary>
public sealed record CueList
{
    /// <summary>How many call-outs the list holds at most: more than anybody keeps an eye on.</summary>
    public const int Most = 100;

    private CueList()
    {
    }

    /// <summary>An empty list.</summary>
    public static CueList Empty { get; } = new();

    /// <summary>How many call-outs were ever put on the list; the newest has this id.</summary>
    public int Made { get; private init; }

    /// <summary>The call-outs in order.</summary>
    public ValueArray<CallOut> CallOuts { get; private init; }

    /// <summary>The call-out with this id, or null where it is not on the list.</summary>
    public CallOut? this[int id] => CallOuts.FirstOrDefault(callOut => callOut.Id == id);

    /// <summary>With a call-out at the end; its id is the next one.</summary>
    public CueList Add(CallOut callOut)
    {
        ArgumentNullException.ThrowIfNull(callOut);
        return this with { Made = callOut.Id, CallOuts = CallOuts.Add(callOut) };
    }

    /// <summary>With a call-out moved behind another one.</summary>
    /// <param name="id">The one that moves.</param>
    /// <param name="after">The one that it comes behind, or null for the head of the list; either must be on the list.</param>
    public CueList Move(int id, int? after)
    {
        if (this[id] is not { } moved || after == id)
            return this;
        var others = CallOuts.Items.Remove(moved);
        var place = after is { } before && this[before] is { } ahead ? others.IndexOf(ahead) + 1 : 0;
        return this with { CallOuts = new(others.Insert(place, moved)) };
    }

    /// <summary>With a call-out changed where it stands.</summary>
    /// <param name="id">Which.</param>
    /// <param name="change">Makes the new one of the old one.</param>
    public CueList Change(int id, Func<CallOut, CallOut> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return this[id] is { } old ? this with { CallOuts = new(CallOuts.Items.Replace(old, change(old))) } : this;
    }

    /// <summary>Without these call-outs.</summary>
    public CueList Remove(IEnumerable<int> ids)
    {
        var gone = ids.ToHashSet();
        return this with { CallOuts = new(CallOuts.Items.RemoveAll(callOut => gone.Contains(callOut.Id))) };
    }
}
