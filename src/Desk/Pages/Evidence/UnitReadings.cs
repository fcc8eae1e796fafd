using Slantwise.Records.Evidence.Chances;
using Slantwise.Records.Evidence.Foresight;
using Slantwise.Records.Lessons;

namespace Slantwise.Desk.Pages.Evidence;

/// <summary>A class's lessons with what they say, each part computed when a page first asks for it, and once. Several pages may share it.</summary>
public sealed class UnitReadings
{
    private readonly Lazy<EvidenceView> _view;
    private readonly Lazy<ClassChances> _chances;
    private readonly Lazy<ClassForesight> _foresight;
    private readonly EarlierFits _fits;

    /// <summary>The readings of some lessons.</summary>
    /// <param name="classId">The class.</param>
    /// <param name="records">Its lessons that have a frozen sheet, earliest first.</param>
    /// <param name="before">The same class before something changed: what still holds is not worked out again; none to work everything out.</param>
    public UnitReadings(Guid classId, IReadOnlyList<LessonRecord> records, UnitReadings? before = null)
    {
        Records = records;
        _fits = before?._fits ?? new();
        _view = new(() => EvidenceView.Of(classId, records));
        _chances = new(() => ClassChances.Of(records, [], []));
        _foresight = new(() => ClassForesight.Of(records, _fits));
    }

    /// <summary>The lessons, earliest first.</summary>
    public IReadOnlyList<LessonRecord> Records { get; }

    /// <summary>The evidence of all of them.</summary>
    public EvidenceView View => _view.Value;

    /// <summary>Each pupil's chance at each level, from all of them.</summary>
    public ClassChances Chances => _chances.Value;

    /// <summary>What the class's predictions are worth.</summary>
    public ClassForesight Foresight => _foresight.Value;

    /// <summary>Loads a class: what was worked out for a page before is there still, as long as nothing has changed.</summary>
    /// <param name="desk">The school, loaded.</param>
    /// <param name="classId">The class.</param>
    public static Task<UnitReadings> LoadAsync(DeskSchool desk, Guid classId) => desk.Shelf.ReadAsync(desk.SchoolId, classId);
}
