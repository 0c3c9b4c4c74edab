package cradlewright.report.scene;

/** What a shape stands for; the painter decides what that looks like. */
public enum Role {
    OUTLINE, STRUCTURE, SUPPORT, SUPPORT_UNLOADED, SUPPORT_STOP, CASTOR, BALANCE, TIP_EDGE, DIMENSION, TEXT, TEXT_STRONG
}
