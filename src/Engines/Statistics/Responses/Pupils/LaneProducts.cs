using System.Runtime.Intrinsics;

namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>Σ M·log(1 + x) for each lane, with logarithms only now and then: factors are multiplied up until one could overflow.</summary>
internal sealed class LaneProducts(int lanes)
{
    private readonly double[] _sums = new double[lanes], _products = new double[lanes];
    private double _reach;

    public void Clear()
    {
        Array.Clear(_sums);
        Array.Fill(_products, 1);
        _reach = 1;
    }

    public double Value(int lane) => _sums[lane] + Math.Log(_products[lane]);

    /// <summary>Makes room for a factor that is nowhere above a bound; false where it is too large, or comes too often, to be multiplied up.</summary>
    public bool Fits(double most, double m)
    {
        if (!(most < 1e30 && m is 1 or 2 or -1)) return false;
        _reach *= m == 2 ? most * most : most;
        if (_reach < 1e250) return true;
        for (var q = 0; q < lanes; q++)
        {
            _sums[q] += Math.Log(_products[q]);
            _products[q] = 1;
        }
        _reach = m == 2 ? most * most : most;
        return true;
    }

    /// <summary>Four lanes' factor, room having been made.</summary>
    public void Multiply(int lane, Vector256<double> onePlusX, double m)
    {
        var product = Vector256.LoadUnsafe(ref _products[lane]);
        product = m == 1 ? product * onePlusX : m == 2 ? product * onePlusX * onePlusX : product / onePlusX;
        product.StoreUnsafe(ref _products[lane]);
    }

    /// <summary>Four lanes' factor by its logarithm.</summary>
    public void Add(int lane, Vector256<double> onePlusX, double m)
    {
        for (var k = 0; k < 4; k++) _sums[lane + k] += m * Math.Log(onePlusX.GetElement(k));
    }
}
