namespace Slantwise.Desk.Pages.Scans;

/// <summary>What became of the files of the last piles, in memory only: what could not be read is nowhere else, and is forgotten with the program.</summary>
public sealed class PileShelf
{
    private const int MostPiles = 40;

    private readonly Lock _gate = new();
    private readonly List<(Guid Id, List<PileLine> Lines)> _piles = [];

    /// <summary>Adds a line to a pile, which is made where it is new.</summary>
    /// <param name="pileId">The pile.</param>
    /// <param name="line">The line.</param>
    public void Add(Guid pileId, PileLine line)
    {
        lock (_gate)
        {
            var pile = _piles.FirstOrDefault(p => p.Id == pileId);
            if (pile.Lines is null)
            {
                pile = (pileId, []);
                _piles.Add(pile);
                if (_piles.Count > MostPiles) _piles.RemoveAt(0);
            }
            pile.Lines.Add(line);
        }
    }

    /// <summary>Forgets the lines of files without a known form, before they are read again.</summary>
    /// <param name="pileId">The pile.</param>
    /// <param name="file">The file's name.</param>
    public void ForgetUntold(Guid pileId, string file)
    {
        lock (_gate) _piles.FirstOrDefault(p => p.Id == pileId).Lines?.RemoveAll(l => l.File == file && l.IsUntold);
    }

    /// <summary>The lines of a pile in the order they came. Empty for a pile that is not known any more.</summary>
    /// <param name="pileId">The pile.</param>
    public IReadOnlyList<PileLine> LinesOf(Guid pileId)
    {
        lock (_gate) return [.. _piles.FirstOrDefault(p => p.Id == pileId).Lines ?? []];
    }
}
