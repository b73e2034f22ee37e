/** What the page does in the person's hands, until the returned function is called. */
export type WatchPage = (on: {
  /** It is hidden or left. */
  readonly leave: () => void;
  /** It comes to the front again. */
  readonly comeBack: () => void;
}) => () => void;

export const watchPage: WatchPage = ({ leave, comeBack }) => {
  const onVisibility = () => {
    if (document.visibilityState === 'hidden') leave();
    else comeBack();
  };
  document.addEventListener('visibilitychange', onVisibility);
  window.addEventListener('pagehide', leave);
  window.addEventListener('focus', comeBack);
  return () => {
    document.removeEventListener('visibilitychange', onVisibility);
    window.removeEventListener('pagehide', leave);
    window.removeEventListener('focus', comeBack);
  };
};
