namespace Slantwise.Engines.Mechanics.Postures;

/// <summary>The second body of a partner balance, as tall and as heavy as the first.</summary>
/// <param name="Pose">The angles; the turn says which way it faces, the first body facing the front.</param>
/// <param name="Contacts">What touches the floor; none for a partner who is carried.</param>
/// <param name="Joins">Where it meets the first body, 1 or more.</param>
public sealed record Partner(Pose Pose, IReadOnlyList<Contact> Contacts, IReadOnlyList<Join> Joins)
{
    /// <summary>Whether the first body carries all of the partner.</summary>
    public bool IsCarried => Contacts.Count == 0;
}
