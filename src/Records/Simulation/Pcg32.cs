namespace Slantwise.Records.Simulation;

/// <summary>PCG-XSH-RR 64/32: the same numbers from the same seed on every platform and every version of the runtime.</summary>
/// <remarks>Source: [ONeill2014] section 6.3 and its reference implementation in C. The base library's Random promises no such thing.</remarks>
internal sealed class Pcg32
{
    private readonly ulong _increment;
    private ulong _state;

    /// <summary>A generator at the start of one of 2^63 sequences.</summary>
    public Pcg32(ulong initialState, ulong sequence)
    {
        _increment = (sequence << 1) | 1;
        Next();
        _state = unchecked(_state + initialState);
        Next();
    }

    /// <summary>The next 32 bits.</summary>
    public uint Next()
    {
        var old = _state;
        _state = unchecked((old * 6364136223846793005) + _increment);
        return uint.RotateRight((uint)(((old >> 18) ^ old) >> 27), (int)(old >> 59));
    }

    /// <summary>A whole number from 0 up to but not including the bound, each as likely as the others.</summary>
    public uint NextBelow(uint bound)
    {
        // The first 2^32 mod bound outputs would favour small numbers: they are thrown away.
        var threshold = unchecked(0u - bound) % bound;
        while (true)
        {
            var bits = Next();
            if (bits >= threshold) return bits % bound;
        }
    }
}
