using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Slantwise.Storage.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class InitialCreate : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "schools",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    head_weight = table.Column<int>(type: "integer", nullable: false),
                    inversion = table.Column<int>(type: "integer", nullable: false),
                    rolls = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_schools", x => x.school_id);
                });

            migrationBuilder.CreateTable(
                name: "classes",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    roster_key = table.Column<string>(type: "text", nullable: true),
                    keep_until = table.Column<DateOnly>(type: "date", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_classes", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_classes_schools",
                        column: x => x.school_id,
                        principalTable: "schools",
                        principalColumn: "school_id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "pupils",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    code = table.Column<string>(type: "text", nullable: false),
                    display_name = table.Column<string>(type: "text", nullable: true),
                    roster_key = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_pupils", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_pupils_schools",
                        column: x => x.school_id,
                        principalTable: "schools",
                        principalColumn: "school_id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "sheets",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    draft = table.Column<string>(type: "text", nullable: false),
                    latest_version = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_sheets", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_sheets_schools",
                        column: x => x.school_id,
                        principalTable: "schools",
                        principalColumn: "school_id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "tasks",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    name = table.Column<string>(type: "text", nullable: false),
                    purpose = table.Column<string>(type: "text", nullable: false),
                    cues = table.Column<string>(type: "text", nullable: false),
                    caution = table.Column<string>(type: "text", nullable: false),
                    levels = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_tasks", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_tasks_schools",
                        column: x => x.school_id,
                        principalTable: "schools",
                        principalColumn: "school_id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "enrolments",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    class_id = table.Column<Guid>(type: "uuid", nullable: false),
                    pupil_id = table.Column<Guid>(type: "uuid", nullable: false),
                    is_current = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_enrolments", x => new { x.school_id, x.class_id, x.pupil_id });
                    table.ForeignKey(
                        name: "fk_enrolments_classes",
                        columns: x => new { x.school_id, x.class_id },
                        principalTable: "classes",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_enrolments_pupils",
                        columns: x => new { x.school_id, x.pupil_id },
                        principalTable: "pupils",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "restrictions",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    pupil_id = table.Column<Guid>(type: "uuid", nullable: false),
                    without = table.Column<int>(type: "integer", nullable: false),
                    until = table.Column<DateOnly>(type: "date", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_restrictions", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_restrictions_pupils",
                        columns: x => new { x.school_id, x.pupil_id },
                        principalTable: "pupils",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "sheet_versions",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    sheet_id = table.Column<Guid>(type: "uuid", nullable: false),
                    version = table.Column<int>(type: "integer", nullable: false),
                    content = table.Column<string>(type: "text", nullable: false),
                    frozen_at = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_sheet_versions", x => new { x.school_id, x.sheet_id, x.version });
                    table.ForeignKey(
                        name: "fk_sheet_versions_sheets",
                        columns: x => new { x.school_id, x.sheet_id },
                        principalTable: "sheets",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "lessons",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    class_id = table.Column<Guid>(type: "uuid", nullable: false),
                    date = table.Column<DateOnly>(type: "date", nullable: false),
                    title = table.Column<string>(type: "text", nullable: false),
                    sheet_id = table.Column<Guid>(type: "uuid", nullable: true),
                    sheet_version = table.Column<int>(type: "integer", nullable: true),
                    mat_count = table.Column<int>(type: "integer", nullable: true),
                    phases = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_lessons", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_lessons_classes",
                        columns: x => new { x.school_id, x.class_id },
                        principalTable: "classes",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_lessons_sheet_versions",
                        columns: x => new { x.school_id, x.sheet_id, x.sheet_version },
                        principalTable: "sheet_versions",
                        principalColumns: new[] { "school_id", "sheet_id", "version" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_lessons_sheets",
                        columns: x => new { x.school_id, x.sheet_id },
                        principalTable: "sheets",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "entries",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    lesson_id = table.Column<Guid>(type: "uuid", nullable: false),
                    pupil_id = table.Column<Guid>(type: "uuid", nullable: true),
                    task_id = table.Column<Guid>(type: "uuid", nullable: true),
                    set_number = table.Column<int>(type: "integer", nullable: true),
                    trial_number = table.Column<int>(type: "integer", nullable: true),
                    kind = table.Column<int>(type: "integer", nullable: false),
                    level_id = table.Column<Guid>(type: "uuid", nullable: true),
                    success_count = table.Column<int>(type: "integer", nullable: true),
                    held_s = table.Column<double>(type: "double precision", nullable: true),
                    is_success = table.Column<bool>(type: "boolean", nullable: true),
                    cue_number = table.Column<int>(type: "integer", nullable: true),
                    flag = table.Column<bool>(type: "boolean", nullable: true),
                    is_blind = table.Column<bool>(type: "boolean", nullable: true),
                    decision = table.Column<int>(type: "integer", nullable: true),
                    topic = table.Column<int>(type: "integer", nullable: true),
                    form = table.Column<int>(type: "integer", nullable: true),
                    phase = table.Column<int>(type: "integer", nullable: true),
                    remark = table.Column<string>(type: "text", nullable: true),
                    source = table.Column<int>(type: "integer", nullable: false),
                    device_id = table.Column<string>(type: "text", nullable: false),
                    device_sequence = table.Column<long>(type: "bigint", nullable: false),
                    made_at = table.Column<long>(type: "bigint", nullable: false),
                    supersedes_id = table.Column<Guid>(type: "uuid", nullable: true),
                    received_at = table.Column<long>(type: "bigint", nullable: false),
                    received_order = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_entries", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_entries_lessons",
                        columns: x => new { x.school_id, x.lesson_id },
                        principalTable: "lessons",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_entries_pupils",
                        columns: x => new { x.school_id, x.pupil_id },
                        principalTable: "pupils",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_classes_name",
                table: "classes",
                columns: new[] { "school_id", "name" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_classes_roster_key",
                table: "classes",
                columns: new[] { "school_id", "roster_key" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_enrolments_pupil_id",
                table: "enrolments",
                columns: new[] { "school_id", "pupil_id" });

            migrationBuilder.CreateIndex(
                name: "ix_entries_lesson_id_received_order",
                table: "entries",
                columns: new[] { "school_id", "lesson_id", "received_order" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_entries_pupil_id",
                table: "entries",
                columns: new[] { "school_id", "pupil_id" });

            migrationBuilder.CreateIndex(
                name: "ix_lessons_class_id",
                table: "lessons",
                columns: new[] { "school_id", "class_id" });

            migrationBuilder.CreateIndex(
                name: "ix_lessons_sheet_id_sheet_version",
                table: "lessons",
                columns: new[] { "school_id", "sheet_id", "sheet_version" });

            migrationBuilder.CreateIndex(
                name: "ix_pupils_code",
                table: "pupils",
                columns: new[] { "school_id", "code" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_pupils_roster_key",
                table: "pupils",
                columns: new[] { "school_id", "roster_key" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_restrictions_pupil_id",
                table: "restrictions",
                columns: new[] { "school_id", "pupil_id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "enrolments");

            migrationBuilder.DropTable(
                name: "entries");

            migrationBuilder.DropTable(
                name: "restrictions");

            migrationBuilder.DropTable(
                name: "tasks");

            migrationBuilder.DropTable(
                name: "lessons");

            migrationBuilder.DropTable(
                name: "pupils");

            migrationBuilder.DropTable(
                name: "classes");

            migrationBuilder.DropTable(
                name: "sheet_versions");

            migrationBuilder.DropTable(
                name: "sheets");

            migrationBuilder.DropTable(
                name: "schools");
        }
    }
}
