using static TorchSharp.torch;

namespace Companion.Sight.Training.Network;

/// <summary>What a network is trained with.</summary>
internal interface ITrainingSet
{
    /// <summary>How large the network is.</summary>
    NetworkShape Shape { get; }

    /// <summary>How many samples there are.</summary>
    int Count { get; }

    /// <summary>Some of them, as the network takes them.</summary>
    Tensor Images(ReadOnlySpan<int> indices);

    /// <summary>How far the network is from what it should say of some of them, on average.</summary>
    Tensor Loss(ReadingNetwork network, ReadOnlySpan<int> indices);
}
