import { useEditor } from '../at-work';

/** What the composer has to say about the line it made last. */
export function Remarks() {
  const remarks = useEditor((state) => state.remarks);
  return (
    <div role="status" aria-label="About the line" className="remarks">
      {remarks.map((remark) => (
        <p key={remark}>{remark}</p>
      ))}
    </div>
  );
}
