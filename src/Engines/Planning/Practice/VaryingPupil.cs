namespace Slantwise.Engines.Planning.Practice;

/// <summary>A pupil in one simulated lesson: as quick or slow as drawn, and each turn different again, whatever others do.</summary>
internal sealed class VaryingPupil
{
    private readonly List<double> _busy = [];
    private readonly List<double> _away = [];
    private readonly SeededDraws _draws;
    private readonly TimeSpread _spread;
    private readonly TimeLaw _law;
    private readonly double _own;

    public VaryingPupil(ulong seed, ulong purpose, TimeSpread spread, TimeLaw law)
    {
        _draws = new(seed, purpose);
        (_spread, _law) = (spread, law);
        _own = law == TimeLaw.Exponential ? 1 : _draws.NextFactor(spread.PupilSd);
    }

    public double BusyFactor(int turn)
    {
        Draw(turn);
        return _busy[turn];
    }

    public double AwayFactor(int turn)
    {
        Draw(turn);
        return _away[turn];
    }

    // Kept by turn: the same turn is asked for again, for the time in which the planned trials are done.
    private void Draw(int turn)
    {
        while (_busy.Count <= turn)
        {
            _busy.Add(_law == TimeLaw.Exponential ? _draws.NextExponential() : _own * _draws.NextFactor(_spread.TurnSd));
            _away.Add(_law == TimeLaw.Exponential ? _draws.NextExponential() : _own * _draws.NextFactor(_spread.TurnSd));
        }
    }
}
