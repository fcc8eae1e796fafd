using Slantwise.Engines.Statistics.Responses.Pupils;
using Slantwise.Engines.Statistics.Responses.Terms;

namespace Slantwise.Engines.Statistics.Responses.Border;

/// <summary>
/// Passes over all pupils, in pieces that threads take and that are summed in their own order: the same bits for any number of threads. A pass may also take
/// every so manieth pupil only and let each stand for that many.
/// </summary>
internal sealed class PupilRounds
{
    private readonly (int First, int End)[] _pieces;
    private readonly IPupilKernel[] _kernels;
    private readonly PupilSums[] _sums;
    private readonly ResponseWork _work;
    private readonly int _stride;

    public PupilRounds(TermTable table, RowLayout layout, ResponseWork work, Func<IPupilKernel> kernel, int stride = 1)
    {
        (_work, _stride) = (work, stride);
        _pieces = [.. Pieces(table, Math.Max(1, work.PieceTermCount), stride)];
        _kernels = [.. _pieces.Select(_ => kernel())];
        _sums = [.. _pieces.Select(_ => new PupilSums(layout.RowCount))];
    }

    /// <summary>The sums over all pupils, valid until the next pass.</summary>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public PupilSums Sum(PupilPoint point)
    {
        _work.Cancellation.ThrowIfCancellationRequested();
        if (_pieces.Length == 1 || _work.ThreadCount <= 1)
        {
            for (var p = 0; p < _pieces.Length; p++) Piece(p, point);
        }
        else Parallel.For(0, _pieces.Length, new ParallelOptions { MaxDegreeOfParallelism = _work.ThreadCount, CancellationToken = _work.Cancellation }, p => Piece(p, point));
        for (var p = 1; p < _sums.Length; p++) _sums[0].Add(_sums[p]);
        if (_stride > 1) _sums[0].Scale(_stride);
        return _sums[0];
    }

    private static IEnumerable<(int, int)> Pieces(TermTable table, int size, int stride)
    {
        // At most 64: each has sums of its own.
        size = Math.Max(size, table.TermCount / stride / 64 + 1);
        int first = 0, terms = 0;
        for (var i = 0; i < table.PupilCount; i += stride)
        {
            terms += table.Terms(i).Length;
            if (terms < size && i + stride < table.PupilCount) continue;
            yield return (first, i + 1);
            (first, terms) = (i + stride, 0);
        }
        if (table.PupilCount == 0) yield return (0, 0);
    }

    private void Piece(int p, PupilPoint point)
    {
        _sums[p].Clear();
        for (var i = _pieces[p].First; i < _pieces[p].End; i += _stride) _kernels[p].Add(i, point, _sums[p]);
    }
}
