using System.Runtime.Intrinsics;

namespace Companion.Engine.Search;

/// <summary>Which cells have how many candidates, counted in all cells at once as far as the search asks: to three.</summary>
internal struct CellCounts
{
    private Vector128<uint> _one;
    private Vector128<uint> _two;
    private Vector128<uint> _three;

    /// <summary>Whether some cell has no candidate.</summary>
    internal readonly bool HasDead => _one != Plane.All;

    /// <summary>Whether some cell has two candidates or more.</summary>
    internal readonly bool HasOpen => _two != Vector128<uint>.Zero;

    /// <summary>The cells with exactly one candidate, given that none is dead.</summary>
    internal readonly Vector128<uint> Single => _one & ~_two;

    /// <summary>The cells with two candidates, or those with more where there are none.</summary>
    internal readonly Vector128<uint> Fewest
    {
        get
        {
            var pairs = _two & ~_three;
            return pairs != Vector128<uint>.Zero ? pairs : _three;
        }
    }

    /// <summary>Counts one digit's places.</summary>
    internal void Add(Vector128<uint> places)
    {
        _three |= _two & places;
        _two |= _one & places;
        _one |= places;
    }
}
