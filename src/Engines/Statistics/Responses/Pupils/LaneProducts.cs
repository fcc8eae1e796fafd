using System.Runtime.Intrinsics;

namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>Σ M·log(1 + x) for each lane, with logarithms only now and then: factors are multiplied up until one could overflow.</summary>
internal sealed class LaneProducts(int lanes)
{
    private const int MostPower = 64;

    private readonly double[] _sums = new double[lanes], _products = new double[lanes];
    private double _reach;

    public void Clear()
    {
        Array.Clear(_sums);
        Array.Fill(_products, 1);
        _reach = 1;
    }

    /// <summary>Four lanes' sums.</summary>
    public Vector256<double> Value(int lane) => Vector256.LoadUnsafe(ref _sums[lane]) + Vector256.Log(Vector256.LoadUnsafe(ref _products[lane]));

    /// <summary>Makes room for a factor that is nowhere above a bound; false where it is too large, or comes too often, to be multiplied up.</summary>
    public bool Fits(double most, double m)
    {
        var times = m == -1 ? 1 : (int)m;
        if (!(most < 1e30 && times is >= 1 and <= MostPower && (times == m || m == -1))) return false;
        var power = 1.0;
        for (var (rest, square) = (times, most); rest > 0; rest >>= 1, square *= square)
            if ((rest & 1) != 0) power *= square;
        if (!(power < 1e250)) return false;
        _reach *= power;
        if (_reach < 1e250) return true;
        for (var q = 0; q < lanes; q += 4)
        {
            Value(q).StoreUnsafe(ref _sums[q]);
            Vector256<double>.One.StoreUnsafe(ref _products[q]);
        }
        _reach = power;
        return true;
    }

    /// <summary>Four lanes' factor, room having been made.</summary>
    public void Multiply(int lane, Vector256<double> onePlusX, double m)
    {
        var product = Vector256.LoadUnsafe(ref _products[lane]);
        if (m == -1) product /= onePlusX;
        else for (var (rest, square) = ((int)m, onePlusX); rest > 0; rest >>= 1, square *= square)
            if ((rest & 1) != 0) product *= square;
        product.StoreUnsafe(ref _products[lane]);
    }

    /// <summary>Four lanes' factor by its logarithm.</summary>
    public void Add(int lane, Vector256<double> onePlusX, double m) =>
        (Vector256.LoadUnsafe(ref _sums[lane]) + m * Vector256.Log(onePlusX)).StoreUnsafe(ref _sums[lane]);
}
