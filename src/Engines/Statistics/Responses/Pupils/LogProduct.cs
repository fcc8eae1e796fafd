namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>Σ M·log(1 + x) with a logarithm only now and then: factors are multiplied up until they could overflow.</summary>
internal struct LogProduct
{
    private double _sum;
    private double _product;

    public static LogProduct Start => new() { _product = 1 };

    public readonly double Value => _sum + Math.Log(_product);

    public void Add(double onePlusX, double m)
    {
        if (onePlusX < 1e30 && m is 1 or 2 or -1) _product = m switch { 1 => _product * onePlusX, 2 => _product * onePlusX * onePlusX, _ => _product / onePlusX };
        else _sum += m * Math.Log(onePlusX);
        if (_product is < 1e200 and > 1e-200) return;
        _sum += Math.Log(_product);
        _product = 1;
    }
}
