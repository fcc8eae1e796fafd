using Slantwise.Records.Sheets;

namespace Slantwise.Desk.Pages.Results;

/// <summary>Which cells a sheet has, and where each key leads from each of them.</summary>
public sealed class GridLayout
{
    private readonly List<GridCell> _cells;
    private readonly Dictionary<GridCell, int> _places;
    private readonly List<GridRow> _rows = [];

    private GridLayout(SheetContent sheet)
    {
        for (var task = 1; task <= sheet.Tasks.Count; task++)
        {
            for (var set = 1; set <= sheet.SetCount; set++) _rows.Add(new(task, set, CellsOf(sheet, task, set)));
        }
        _cells = [.. _rows.SelectMany(row => row.Cells)];
        _places = _cells.Select((cell, place) => (cell, place)).ToDictionary(c => c.cell, c => c.place);
    }

    /// <summary>The lines, task by task and set by set. Empty for a sheet with no task.</summary>
    public IReadOnlyList<GridRow> Rows => _rows;

    /// <summary>Every cell in the order a sheet is typed.</summary>
    public IReadOnlyList<GridCell> Cells => _cells;

    /// <summary>The layout of a sheet.</summary>
    /// <param name="sheet">The frozen sheet of the lesson. A column it does not ask for is left out.</param>
    public static GridLayout Of(SheetContent sheet) => new(sheet);

    /// <summary>Whether the sheet has this cell.</summary>
    public bool Has(GridCell cell) => _places.ContainsKey(cell);

    /// <summary>The cell after this one; none after the last.</summary>
    public GridCell? After(GridCell cell) => At(_places[cell] + 1);

    /// <summary>The cell before this one; none before the first.</summary>
    public GridCell? Before(GridCell cell) => At(_places[cell] - 1);

    /// <summary>The same column one set earlier; none above the first, or where that task does not ask for it.</summary>
    public GridCell? Above(GridCell cell) => SameColumn(cell, -1);

    /// <summary>The same column one set later; none below the last, or where that task does not ask for it.</summary>
    public GridCell? Below(GridCell cell) => SameColumn(cell, +1);

    /// <summary>Where Enter leads: on through the set, and from the decision or the reason to the next set; none at the end of the sheet.</summary>
    public GridCell? Onward(GridCell cell) => cell.Kind is CellKind.Decision or CellKind.Reason
        ? _rows.ElementAtOrDefault(RowOf(cell) + 1)?.Cells[0]
        : After(cell);

    private static List<GridCell> CellsOf(SheetContent sheet, int task, int set)
    {
        List<GridCell> cells = [new(task, set, CellKind.Level)];
        if (sheet.Predicts != PredictionKind.Nothing) cells.Add(new(task, set, CellKind.Prediction));
        cells.AddRange(Enumerable.Range(1, sheet.TrialCount).Select(trial => new GridCell(task, set, CellKind.Trial, trial)));
        if (sheet.Tasks[task - 1].Cues.Count > 0) cells.Add(new(task, set, CellKind.Cues));
        cells.AddRange([new(task, set, CellKind.Decision), new(task, set, CellKind.Reason)]);
        return cells;
    }

    private GridCell? At(int place) => place >= 0 && place < _cells.Count ? _cells[place] : null;

    private int RowOf(GridCell cell) => _rows.FindIndex(row => row.TaskNumber == cell.TaskNumber && row.SetNumber == cell.SetNumber);

    private GridCell? SameColumn(GridCell cell, int step)
    {
        if (_rows.ElementAtOrDefault(RowOf(cell) + step) is not { } row) return null;
        var there = cell with { TaskNumber = row.TaskNumber, SetNumber = row.SetNumber };
        return Has(there) ? there : null;
    }
}
